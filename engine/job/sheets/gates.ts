// This file is about the sheets of the gates: one for each, with its opening, its leaf, its pickets and its brace.
import { vocabulary } from '../../catalogue.ts'
import { placeLabel } from '../../places.ts'
import { isQuantity } from '../../quantities/quantity.ts'
import { showValue } from '../explain.ts'
import type { Node } from '../node.ts'
import type { Block, Sheet } from '../sheets.ts'
import { byTape, postName, remarksOf, type Site, workedAt } from './site.ts'
import { gatePosts } from './yard.ts'

export const gateSheets = (site: Site): Sheet[] =>
  site.plan.fence.runs.flatMap((it) => it.gates).flatMap((it) => gateSheet(site, it.place) ?? [])

function gateSheet(site: Site, place: string): Sheet | undefined {
  const leaf = workedAt(site, 'leafWidth', place)
  if (!leaf) return undefined
  const pickets = workedAt(site, 'picketsEachGate', place)
  const brace = workedAt(site, 'braceLength', place)
  const posts = gatePosts(site, place)
  const marks = pickets?.outcome.tables ?? []
  return {
    title: placeLabel(place).replace(/^gate/, 'Gate'),
    blocks: [
      {
        kind: 'lines',
        lines: [
          ...(posts
            ? [`between posts: ${posts.map((it) => `${it.number} (${postName(it)})`).join(' and ')}`]
            : []),
          ...givenTo(leaf),
          ...given(leaf, 'gives'),
        ],
      },
      ...drawn(leaf, 'The leaf in its opening.'),
      ...(brace
        ? [{ kind: 'lines', lines: ['Brace:', ...givenTo(brace), ...given(brace, 'gives')] } satisfies Block, ...drawn(brace, 'The brace.')]
        : []),
      ...(pickets ? [{ kind: 'lines', lines: ['Pickets on each leaf:', ...given(pickets, 'gives')] } satisfies Block] : []),
      ...marks.map(
        (table): Block => ({ kind: 'table', table: { ...table, title: 'Left edge of each picket, from the edge of the leaf' } }),
      ),
      ...drawn(pickets, 'The pickets across the leaf, from edge to edge.'),
      { kind: 'lines', lines: remarksOf([leaf, brace]) },
    ],
  }
}

const givenTo = (node: Node): string[] => given(node, 'needs')

/** What a part was given or gives, each on its line; what nobody said is marked. */
function given({ outcome, part }: Node, side: 'needs' | 'gives'): string[] {
  if (!outcome.ok) return []
  const wanted = side === 'needs' ? [...outcome.given.keys()] : [...outcome.values.keys()]
  return wanted.flatMap((name) => {
    const word = vocabulary.get(name)
    const value = side === 'needs' ? outcome.given.get(name)?.value : outcome.values.get(name)
    if (!word || value === undefined || name === 'tapeMark') return []
    const usual = side === 'needs' && outcome.given.get(name)?.role === 'assumed' ? ' (usual, nobody said)' : ''
    // What a part gives under another name is told where it is asked for.
    if (side === 'gives' && part.as && !part.as[name]) return []
    return [`${word.label}${usual}: ${isQuantity(value) ? byTape(value) : showValue(word, value)}`]
  })
}

function drawn(node: Node | undefined, caption: string): Block[] {
  const svg = node?.outcome.ok ? node.outcome.drawing : null
  return svg ? [{ kind: 'drawing', svg, caption }] : []
}
