// This file is about both sides told in one message: what is needed and what there is, an amount and another, an amount and what comes on top.
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { asksEnough, comparedAs } from './asked-of-last.ts'
import { requestFor, tell } from './request-parts.ts'
import { isTax } from './prices-said.ts'
import type { Token } from './stems.ts'

const needs = /\b(need|needs|needed|takes?|want|wants|require[sd]?|calls for|for)\s+(about |some |only |all )?$/
const hadBefore =
  /\b(have|has|got|had|ve|found|bought|left|there are|theres|only)\s+(about |some |only |already |just )*$/
const hadBehind = /^\s*(?:\p{L}+\s){0,2}(already|in the (?:shed|garage|barn|yard)|left over|on hand|here)\b/u

/** “I need 61 pickets and have 48 already”. */
export function enoughTold(heard: Heard): Request | undefined {
  const [one, two, more] = heard.readings
  if (!one || !two || more || !asksEnough.test(heard.said)) return undefined
  const all = [one, two]
  if (all.some((it) => it.bare?.d !== 1n || it.section || it.change)) return undefined
  const wanted = all.find((it) => needs.test(wordsBefore(heard, it)))
  const there = all.find(
    (it) => it !== wanted && (hadBefore.test(wordsBefore(heard, it)) || hadBehind.test(wordsBehind(heard, it))),
  )
  if (!wanted || !there) return undefined
  return requestFor('enough-pieces', ['enoughPieces'], [tell('piecesWanted', wanted.tag), tell('piecesHad', there.tag)])
}

const compares = /^\s*(?:so |and |ok )*(?:is|are)\b.*\b(?:more|less|bigger|smaller|over|under)\b/i
/** “Is 46 cubic feet more than a yard?” */
export function comparedTold(heard: Heard): Request | undefined {
  const [one, two, more] = heard.readings
  const kind = one?.quantity?.kind
  const name = kind && comparedAs[kind]
  if (!one || !two || more || !name || two.quantity?.kind !== kind || !compares.test(heard.said)) return undefined
  if (kind === 'length' || one.per || two.per || one.change || two.change || heard.said.split(/\s+/).length > 14)
    return undefined
  return requestFor('amount-against', ['comparison'], [tell(`${name}Here`, one.tag), tell(`${name}Mark`, two.tag)])
}

const ofSurprises = /\b(contingen\w+|cushion|surprises?|overruns?|unforeseen|just in case)\b/i
/** “$2,400, with 10 % contingency on top”. */
export function shareTold(heard: Heard, message: readonly Token[]): Request | undefined {
  const share = heard.readings.find((it) => it.quantity?.kind === 'percent')
  const rest = heard.readings.filter((it): it is Tagged => it !== share)
  const [amount, more] = rest
  if (!share || !amount || more || amount.quantity?.kind !== 'money' || amount.per) return undefined
  if (!ofSurprises.test(heard.said) || message.some(isTax)) return undefined
  return requestFor(
    'amount-and-share',
    ['amountWithShare'],
    [tell('amountBefore', amount.tag), tell('shareOnTop', share.tag)],
  )
}
