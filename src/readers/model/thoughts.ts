// This file is about thinking written into the text: `<think>…</think>`, and channels between control tokens. It is never shown.

export interface Thought {
  readonly text: string
  readonly reasoning: string
}

export function setThoughtsAside(content: string): Thought {
  const thoughts: string[] = []
  const keep = (_whole: string, thought: string): string => {
    thoughts.push(thought.trim())
    // What stood on either side does not grow together.
    return '\n'
  }
  const text = content
    .replace(/<(?:think|thinking|thought)>([\s\S]*?)(?:<\/(?:think|thinking|thought)>|$)/g, keep)
    // Where the opening tag stood in the prompt, only the closing one is written.
    .replace(/^([\s\S]*?)<\/(?:think|thinking|thought)>/, keep)
    .replace(channel('analysis'), keep)
    .replace(channel('final'), (_whole, said: string) => said)
  return { text, reasoning: thoughts.filter((thought) => thought !== '').join('\n') }
}

/** `<|start|>assistant<|channel|>final<|message|>…<|end|>` */
const channel = (name: string): RegExp =>
  new RegExp(
    `(?:<\\|start\\|>assistant)?<\\|channel\\|>${name}<\\|message\\|>([\\s\\S]*?)(?:<\\|(?:end|return)\\|>|(?=<\\|(?:start|channel)\\|>)|$)`,
    'g',
  )

/** Control tokens that a server forgot to take off the end. */
export const withoutEndTokens = (text: string): string =>
  text.replace(/(?:\s*(?:<\|\w+\|>|<｜[^｜<>]*｜>|<\/s>))+\s*$/, '')
