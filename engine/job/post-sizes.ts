// This file is about how long one post of a fence is, and how much of it shows: by its kind, and longer where its run steps down.
import type { Problem } from '../outcome.ts'
import { add } from '../quantities/amount.ts'
import { isQuantity, less, type Quantity } from '../quantities/quantity.ts'
import { decided, type Job } from './job.ts'
import type { Post } from './laid-out.ts'
import type { Plan } from './node.ts'

export interface PostSize {
  readonly length: Quantity
  /** How much of it stands above the ground where it stands; nothing where only its length was told. */
  readonly above: Quantity | undefined
  /** By how much it is longer than others of its kind, since its run steps down there. */
  readonly step: Quantity | undefined
}

/** What a post's size hangs on. */
type Known = Pick<Plan, 'node' | 'worked'> & { readonly job: Job }

/** The sizes of one post, what keeps them from being known, or nothing where no part gives them. */
export function postSizeOf(
  post: Post,
  { node, worked, job }: Known,
): PostSize | { problems: readonly Problem[] } | undefined {
  const outcome = node('postLength', post.kind)?.outcome
  const told = decided(job, 'postLength', post.kind)?.value
  const given = outcome?.given.get('postAbove')?.value
  const above = isQuantity(given) ? given : undefined
  if (isQuantity(told)) return { length: told, above, step: undefined }
  if (outcome && !outcome.ok) return { problems: outcome.problems }
  const length = outcome?.values.get('postLength')
  if (!isQuantity(length)) return undefined
  const words = post.kind === 'gate-posts' ? ['longerPost', 'longerAtGates'] : ['longerPost']
  const steps = post.stands
    .flatMap(({ run }) => words.map((word) => worked(word, run)?.value))
    .filter((it) => isQuantity(it))
  const step = steps.reduce<Quantity | undefined>((a, b) => (a && less(b, a) ? a : b), undefined)
  const longer = (it: Quantity): Quantity => (step ? { ...it, amount: add(it.amount, step.amount) } : it)
  return { length: longer(length), above: above && longer(above), step }
}
