// This file is about which notes there are, in the order a job meets them.
import type { Note } from './note.ts'
import { settingPosts } from './setting-posts.ts'

export const notes: readonly Note[] = [...settingPosts]

export const noteNamed = (name: string): Note | undefined => notes.find((it) => it.name === name)
