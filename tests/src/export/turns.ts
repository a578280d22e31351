// This file is about a talk in a test, turn by turn, as it would come back from the store.
import type { Turn } from '../../../src/answer.ts'
import { createAssistant } from '../../../src/assistant.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'

export async function turnsOf(...messages: readonly string[]): Promise<Turn[]> {
  const assistant = createAssistant(offlineReader)
  const turns: Turn[] = []
  for (const said of messages) {
    const { answer, job } = await assistant.turn({ said, before: turns })
    turns.push(JSON.parse(JSON.stringify({ n: turns.length, said, answer, job })) as Turn)
  }
  return turns
}

export const spacing = 'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?'
export const calendar =
  'I call on 1 June 2026 with 3 full working days notice. Digging takes 2 days, setting posts 1 day, the concrete cures for 3 days, rails 1 day, pickets 2 days, 14 days to dry, then 2 coats. When is the fence finished?'
