// This file is about the audit: an exported conversation is read and worked again from its words, and every difference is named.
import type { Answer, Call, Figure, Turn } from './answer.ts'
import { answerTo } from './assistant.ts'
import { hear, hearSince, jobAfter } from './hearing.ts'
import type { Exported } from './export/export.ts'
import { wouldNotPass } from './guard/slots-of.ts'
import { haltedTurn } from './halted.ts'

export interface Difference {
  readonly turn: number
  /** What differs: the ref of a figure (`u1`, `r1.bags`), or the part of the answer. */
  readonly what: string
  readonly exported: string
  readonly worked: string
}

/** Works every turn again from what was said. Each turn stands on the job as worked here, not as exported. */
export async function audit({ turns }: Exported): Promise<Difference[]> {
  const again: Turn[] = []
  const differences: Difference[] = []
  for (const turn of turns) {
    const { heard, prose, unwritten, front, halted } = turn.answer
    const worked =
      halted === 'reading'
        ? haltedTurn(jobAfter(again), again.length, front)
        : await answerTo(
            {
              request: heard.request,
              by: front,
              ...(heard.notice ? { notice: heard.notice } : {}),
              ...(heard.since === undefined ? {} : { since: heard.since }),
            },
            heard.since === undefined ? hear(turn.said, jobAfter(again)) : hearSince(heard.since, again, turn.said),
            again.length,
            prose ? async () => prose : unwritten ? async () => ({ unwritten }) : undefined,
          )
    differences.push(...compare(turn, worked.answer))
    // A job that differs only because an earlier turn does is not blamed again.
    if (!sameJson(withoutWords(turn.job), withoutWords(worked.job)) && differences.length === 0)
      differences.push({
        turn: turn.n,
        what: 'the job after it',
        exported: JSON.stringify(turn.job),
        worked: JSON.stringify(worked.job),
      })
    again.push({ n: again.length, said: turn.said, answer: worked.answer, job: JSON.parse(JSON.stringify(worked.job)) })
  }
  return differences
}

/** The job without how its values were said, and what was asked of them (`as`, `either`): an export from before those were kept is none the worse. */
const withoutWords = (job: unknown): unknown =>
  JSON.parse(JSON.stringify(job ?? null, (key, value) => (key === 'as' || key === 'either' ? undefined : value)))

// Through JSON, as the export went: an absent field and an undefined one are the same.
const sameJson = (a: unknown, b: unknown): boolean => JSON.stringify(sorted(a)) === JSON.stringify(sorted(b))
const sorted = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(sorted)
    : value && typeof value === 'object'
      ? Object.fromEntries(
          Object.entries(value)
            .filter(([, it]) => it !== undefined)
            .sort(([a], [b]) => (a < b ? -1 : 1))
            .map(([key, it]) => [key, sorted(it)]),
        )
      : value

function compare({ n: turn, said, answer: exported }: Turn, worked: Answer): Difference[] {
  const found: Difference[] = []
  const differ = (
    what: string,
    a: unknown,
    b: unknown,
    say: (it: unknown) => string = (it) => (typeof it === 'string' ? it : (JSON.stringify(it) ?? 'nothing')),
  ): void => {
    if (!sameJson(a, b)) found.push({ turn, what, exported: say(a), worked: say(b) })
  }
  const figures = (where: string, a: readonly Figure[], b: readonly Figure[]): void => {
    for (const figure of [...a, ...b.filter((it) => !a.some((other) => other.ref === it.ref))]) {
      const [left, right] = [a, b].map((list) => list.find((it) => it.ref === figure.ref))
      differ(`${figure.ref} (${figure.label}, ${where})`, left, right, sayFigure(left, right))
    }
  }
  figures(
    'said',
    exported.readAs.map((it) => it.figure),
    worked.readAs.map((it) => it.figure),
  )
  differ(
    'what was said',
    exported.readAs.map((it) => it.said),
    worked.readAs.map((it) => it.said),
  )
  for (let i = 0; i < Math.max(exported.calls.length, worked.calls.length); i++) {
    const [a, b] = [exported.calls[i], worked.calls[i]]
    if (!a || !b) {
      differ(`call ${i + 1}`, a?.calculation ?? 'none', b?.calculation ?? 'none')
      continue
    }
    figures('given', a.inputs, b.inputs)
    figures('worked', a.results, b.results)
    for (const part of ['calculation', 'title', 'steps', 'tables', 'doubts', 'sources', 'drawing', 'problems'] as const)
      listed(differ, `${a.id}, ${part}`, a[part], b[part])
  }
  figures('figures', exported.figures, worked.figures)
  for (const part of ['changed', 'asks', 'cautions', 'declined', 'turn'] as const)
    listed(differ, part, exported[part], worked[part])
  for (const line of wouldNotPass(exported.prose, worked, said))
    found.push({ turn, what: 'prose', exported: line, worked: 'the guard does not let this through' })
  const [mine, theirs] = [exported.reply.split('\n'), worked.reply.split('\n')]
  for (const [i, line] of mine.entries()) differ(`reply, line ${i + 1}`, line, theirs[i] ?? 'nothing')
  if (theirs.length > mine.length) differ('reply', 'it ends early', theirs.slice(mine.length).join(' / '))
  return found
}

type Differ = (what: string, a: unknown, b: unknown) => void

/** A list is compared one by one, so that the difference names the step or row. */
function listed(
  differ: Differ,
  what: string,
  a: Call[keyof Call] | Answer[keyof Answer] | undefined,
  b: typeof a,
): void {
  if (!Array.isArray(a) || !Array.isArray(b)) {
    differ(what, a, b)
    return
  }
  for (let i = 0; i < Math.max(a.length, b.length); i++) differ(`${what} ${i + 1}`, a[i], b[i])
}

const sayFigure =
  (left: Figure | undefined, right: Figure | undefined) =>
  (it: unknown): string => {
    const figure = it as Figure | undefined
    if (!figure) return 'nothing'
    // Where the texts agree, it is another field that was changed: name it.
    if (left && right && left.text === right.text) {
      const fields = (Object.keys({ ...left, ...right }) as (keyof Figure)[]).filter(
        (field) => left[field] !== right[field],
      )
      return `${figure.text} [${fields.map((field) => `${field} ${JSON.stringify(figure[field])}`).join(', ')}]`
    }
    return figure.text
  }
