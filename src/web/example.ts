// This file is about the worked example that a blank page shows: a question of our own, answered by the program as any other.
import { createAssistant } from '../assistant.ts'
import { offlineReader } from '../readers/offline/offline.ts'
import type { Example } from './app.tsx'

const said = 'How many pickets go in a 93 in opening with 3 1/2 in pickets and gaps no wider than 2 1/2 in?'

export const workedExample = async (): Promise<Example> => ({
  said,
  answer: (await createAssistant(offlineReader).turn({ said, before: [] })).answer,
})
