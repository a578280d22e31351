// This file is about the planning prompts: prose that sets a model to work with the tools, a part of the job each. They hold no figures.
import type { Prompt } from '@modelcontextprotocol/sdk/types.js'
import { promptsIn } from '../prompts.ts'

const known = {
  name: 'known',
  description: 'What is known already, in your own words: runs, gates, height, wood, country, what is built.',
  required: false,
}

/** The first paragraph of a file is its title, the second what it is for; the rest is what is said. */
const parts = (text: string): { title: string; description: string; said: string } => {
  const [title = '', description = '', ...said] = text.split(/\n{2,}/)
  return { title: title.replace(/^# /, ''), description, said: said.join('\n\n') }
}

export const plans = (): Prompt[] =>
  Object.entries(promptsIn('planning')).map(([name, text]) => {
    const { title, description } = parts(text)
    return { name, title, description, arguments: [known] }
  })

/** What is said to the model; undefined where there is no such prompt. */
export function planSaid(name: string, told: Readonly<Record<string, string>> | undefined): string | undefined {
  const files = promptsIn('planning')
  const text = Object.hasOwn(files, name) ? files[name] : undefined
  return text && parts(text).said.replaceAll('{{known}}', () => told?.known?.trim() || 'nothing yet.')
}
