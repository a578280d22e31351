import fc from 'fast-check'
import { expect, test } from 'vitest'
import { createEventReader } from '../../../../src/readers/model/events.ts'
import { bytesOf } from './fake-server.ts'

const arrivalsOf = (pieces: readonly Uint8Array[]) => {
  const events = createEventReader()
  return [...pieces.flatMap((piece) => events.push(piece)), ...events.end()]
}

test.each(['\n', '\r\n', '\r'])(
  'an event over several lines that end in %j is one event, wherever the network cuts it',
  (lineEnd) => {
    const said = [
      ': ping',
      '',
      'event: x',
      'data: {"a":',
      'data:"½",',
      'data: "b":1}',
      'id: 7',
      '',
      'data: ',
      '',
      'data: [DONE]',
      '',
      '',
    ].join(lineEnd)
    const bytes = bytesOf(said)
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: bytes.length - 1 }), { maxLength: 20 }), (places) => {
        const cuts = [0, ...places.sort((one, other) => one - other), bytes.length]
        const pieces = cuts.slice(1).map((end, at) => bytes.subarray(cuts[at], end))
        expect(arrivalsOf(pieces)).toEqual([{ kind: 'event', value: { a: '½', b: 1 } }, { kind: 'done' }])
      }),
    )
  },
)

test('the last event needs no blank line behind it', () => {
  expect(arrivalsOf([bytesOf('data: {"a":1}')])).toEqual([{ kind: 'event', value: { a: 1 } }])
})

test('a word that is no JSON is a sign of life, and a broken piece of JSON is told', () => {
  expect(arrivalsOf([bytesOf('data: ping\n\ndata: {"a":1}\n\ndata: {"a":\n\n')])).toEqual([
    { kind: 'event', value: { a: 1 } },
    { kind: 'unreadable', why: 'json' },
  ])
})

test('a list of whole answers gives each, as some servers wrap an error', () => {
  expect(arrivalsOf([bytesOf('[{"error":{"code":400}}]')])).toEqual([
    { kind: 'event', value: { error: { code: 400 } } },
    { kind: 'done' },
  ])
})

test('nothing, a page and a broken document are told apart', () => {
  for (const [text, why] of [
    ['', 'empty'],
    [': ping\n\n', 'empty'],
    ['<html>', 'markup'],
    ['{"a":', 'json'],
  ] as const) {
    expect(arrivalsOf([bytesOf(text)])).toEqual([{ kind: 'unreadable', why }])
  }
})
