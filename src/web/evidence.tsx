// This file is about the evidence as a page: for each calculation its formulas, what it was held against, and what nobody vouches for.
import { aboutTheTests, type Evidence, figure, kinds, sumOf } from '../evidence.ts'
import { Leaf } from './leaf.tsx'

export const evidencePage = (evidence: Evidence | undefined): string =>
  `<!doctype html>${String(<Page evidence={evidence} />)}`

const Page = ({ evidence }: { readonly evidence: Evidence | undefined }) => (
  <Leaf
    title="What the sums were held against"
    cover={
      <>
        <p class="by">What the sums were held against.</p>
        <nav aria-label="Pages of the book">
          <a href="/">Back to the book</a>
        </nav>
      </>
    }
  >
    <main class="shared" aria-label="Evidence">
      {evidence ? (
        <Report evidence={evidence} />
      ) : (
        <p>The report has not been made here yet. Whoever runs this server can make it: npm run evidence</p>
      )}
    </main>
  </Leaf>
)

const Report = ({ evidence }: { readonly evidence: Evidence }) => {
  const sum = sumOf(evidence)
  return (
    <>
      <section class="reply">
        <p>
          Version {evidence.version}: {sum.agree} figures agree with what they were held against, {sum.differ} differ.{' '}
          {sum.habit} facts are common practice without a source, {sum.memory} are from memory.
        </p>
        <ul>
          {Object.entries(kinds).map(([kind, says]) => (
            <li>
              {sum.byKind[kind as keyof typeof kinds]} against {says}
            </li>
          ))}
        </ul>
        {aboutTheTests(evidence.mutation).map((it) => (
          <p>{it}</p>
        ))}
        <nav aria-label="Calculations">
          <ul class="list">
            {evidence.calculations.map(({ name, title }) => (
              <li>
                <a href={`#${name}`}>{title}</a>
              </li>
            ))}
          </ul>
        </nav>
      </section>
      {evidence.calculations.map((it) => (
        <Calculation {...it} />
      ))}
    </>
  )
}

const Calculation = (it: Evidence['calculations'][number]) => (
  <section class="reply" id={it.name}>
    <h2>{it.title}</h2>
    <ul>
      {it.formulas.map(({ formula, because }) => (
        <li>
          <code>{formula}</code>: {because}
        </li>
      ))}
    </ul>
    {it.checks.map(({ what, kind, source, unit, expected, got, tolerance, pass }) => (
      <p>
        {pass ? 'Agrees' : 'Differs'}: {what}. Expected {figure(expected)} {unit}, got {figure(got)}, within{' '}
        {figure(tolerance)}. Against {kinds[kind]}: {source}
      </p>
    ))}
    {it.checks.length === 0 ? <p>Nothing was held against it.</p> : null}
    <Facts title="From a source" facts={it.sourced} />
    <Facts title="Common practice, no source" facts={it.habit} />
    <Facts title="From memory" facts={it.memory} />
  </section>
)

const Facts = ({
  title,
  facts,
}: {
  readonly title: string
  readonly facts: Evidence['calculations'][number]['habit']
}) =>
  facts.length === 0 ? null : (
    <>
      <h3>{title}</h3>
      <ul>
        {facts.map(({ fact, from }) => (
          <li>
            {fact} ({from})
          </li>
        ))}
      </ul>
    </>
  )
