// This file is about the sheets of the gates: one for each, with its opening, its leaf, its pickets and its brace.
import { vocabulary } from '../../catalogue.ts'
import { placeLabel } from '../../places.ts'
import { isQuantity, type Value } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { showValue } from '../explain.ts'
import type { Node } from '../node.ts'
import type { Block, Sheet } from '../sheets.ts'
import { figure, postName, remarksOf, type Site, sizeIn, workedAt } from './site.ts'
import { gatePosts } from './yard.ts'

export const gateSheets = (site: Site): Sheet[] =>
  site.plan.fence.runs.flatMap((it) => it.gates).flatMap((it) => gateSheet(site, it.place) ?? [])

function gateSheet(site: Site, place: string): Sheet | undefined {
  const leaf = workedAt(site, 'leafWidth', place)
  if (!leaf) return undefined
  const pickets = workedAt(site, 'picketsEachGate', place)
  const brace = workedAt(site, 'braceLength', place)
  const posts = gatePosts(site, place)
  return {
    title: placeLabel(place).replace(/^gate/, 'Gate'),
    blocks: [
      ...drawn(leaf, 'The leaf in its opening.'),
      {
        kind: 'lines',
        lines: [
          ...(posts ? [`between posts: ${posts.map((it) => `${it.number} (${postName(it)})`).join(' and ')}`] : []),
          ...givenTo(leaf),
          ...givenBy(leaf),
          ...onLeaf(pickets),
        ],
      },
      ...drawn(brace, 'The brace.'),
      ...(brace ? [{ kind: 'lines', lines: ['Brace:', ...givenTo(brace), ...givenBy(brace)] } satisfies Block] : []),
      ...marksOf(pickets),
      { kind: 'lines', lines: remarksOf([leaf, brace]) },
    ],
  }
}

/** A picket is flush with each edge of the leaf: what stands there as a post’s opening is the leaf. */
function onLeaf(node: Node | undefined): string[] {
  const [pickets, gap] = [sizeIn(node, 'picketsEachGate'), sizeIn(node, 'tapeGap')]
  return [
    ...(pickets ? [`pickets on each leaf, one at each edge: ${show(pickets)}`] : []),
    ...(gap ? [`gap between them, by the tape: ${show(gap)}`] : []),
  ]
}

const marksOf = (node: Node | undefined): Block[] =>
  (node?.outcome.ok ? node.outcome.tables : []).map(
    ({ columns, rows }): Block => ({
      kind: 'table',
      table: {
        title: 'Left edge of each picket, from the edge of the leaf',
        columns: columns.slice(0, 2),
        rows: rows.map((it) => it.slice(0, 2)),
      },
    }),
  )

/** What a part was given, each on its line: what nobody said is marked, and what it did not use is left out. */
function givenTo({ outcome }: Node): string[] {
  if (!outcome.ok) return []
  const used = new Set(outcome.steps.flatMap((it) => it.formula.split(/[^A-Za-z]+/)))
  return [...outcome.given].flatMap(([name, { value, role }]) =>
    isQuantity(value) && !used.has(name) ? [] : written(name, value, role === 'assumed' ? ' (usual, nobody said)' : ''),
  )
}

const givenBy = ({ outcome }: Node): string[] =>
  outcome.ok ? [...outcome.values].flatMap(([name, value]) => written(name, value, '')) : []

function written(name: string, value: Value, beside: string): string[] {
  const word = vocabulary.get(name)
  if (!word) return []
  return [`${word.label}${beside}: ${isQuantity(value) ? figure(value) : showValue(word, value)}`]
}

function drawn(node: Node | undefined, caption: string): Block[] {
  const svg = node?.outcome.ok ? node.outcome.drawing : null
  return svg ? [{ kind: 'drawing', svg, caption }] : []
}
