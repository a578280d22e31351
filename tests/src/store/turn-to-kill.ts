// This file is about the turns that are written while programs are killed: each is known from its talk and its number, and some are long.
import type { Answer } from '../../../src/answer.ts'
import type { KeptTurn } from '../../../src/store/store.ts'

export function turnToKill(id: string, n: number): Omit<KeptTurn, 'at'> {
  const said = `${id} ${n} `.repeat(1 + ((n * 37) % 1500))
  return {
    n,
    key: `key ${n}`,
    said,
    answer: { turn: n, reply: said } as unknown as Answer,
    job: { decisions: [n] },
    events: [{ event: 'answer', data: said }],
  }
}
