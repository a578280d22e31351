// This file is about the prompts: prose in prompts/, read once. They hold no figures; calculations describe themselves.
import { readFileSync } from 'node:fs'

// The sources and the built program both stand one folder below the repository's top.
const prompt = (name: string): string => readFileSync(new URL(`../prompts/${name}.md`, import.meta.url), 'utf8').trim()

export const readingPrompt = (): string => prompt('read')
export const writingPrompt = (): string => prompt('write')
