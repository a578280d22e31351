// This file is about making the evidence: every check worked, beside the formulas and the sources of its calculation.
import { catalogue } from '../../engine/catalogue.ts'
import { version } from '../../engine/editions.ts'
import type { Source } from '../../engine/outcome.ts'
import { type Evidence, keptMutationSchema } from '../../src/evidence.ts'
import { runCheck } from './check.ts'
import { checks } from './checks.ts'
import { explained } from './explained.ts'
import kept from './mutation.json' with { type: 'json' }

export function report(): Evidence {
  const done = checks.map(runCheck)
  return {
    version,
    mutation: keptMutationSchema.parse(kept),
    calculations: catalogue.map(({ name, title, lines, sources }) => ({
      name,
      title,
      formulas: [...lines].map(([gives, { line, because }]) => ({ formula: `${gives} = ${line.text}`, because })),
      checks: done
        .filter((it) => it.calculation === name)
        .map(({ what, kind, source, reference, unit, expected, got, tolerance, pass }) => ({
          what,
          kind,
          source,
          ...(reference ? { reference } : {}),
          unit,
          expected,
          got,
          tolerance,
          pass,
        })),
      ...byStanding(sources),
    })),
    explained,
  }
}

const byStanding = (sources: readonly Source[]) => {
  const isFromMemory = (from: string): boolean => /from memory/i.test(from)
  const isHabit = (from: string): boolean => !isFromMemory(from) && /no source|common practice/i.test(from)
  return {
    sourced: sources.filter(({ from }) => !isFromMemory(from) && !isHabit(from)),
    habit: sources.filter(({ from }) => isHabit(from)),
    memory: sources.filter(({ from }) => isFromMemory(from)),
  }
}
