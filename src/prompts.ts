// This file is about the prompts: prose in prompts/, read once. They hold no figures; calculations describe themselves.
import { readdirSync, readFileSync } from 'node:fs'

// The sources and the built program both stand one folder below the repository's top.
const folder = new URL('../prompts/', import.meta.url)
const prompt = (name: string): string => readFileSync(new URL(`${name}.md`, folder), 'utf8').trim()

export const readingPrompt = (): string => prompt('read')
export const writingPrompt = (): string => prompt('write')
/** What a program that uses the tools is told of them. */
export const toolsPrompt = (): string => prompt('mcp')

/** Every prompt of a folder in prompts/, by name. */
export const promptsIn = (subject: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(new URL(`${subject}/`, folder))
      .filter((it) => it.endsWith('.md'))
      .sort()
      .map((it) => [it.replace(/\.md$/, ''), prompt(`${subject}/${it.replace(/\.md$/, '')}`)]),
  )
