// What the words beside a quantity rule out, and what they do not.
import { describe, expect, it } from 'vitest'
import { newJob, vocabulary, type Word } from '../../../../engine/index.ts'
import { hear } from '../../../../src/hearing.ts'
import { isContradicted } from '../../../../src/readers/offline/contradicted.ts'

/** Whether the first quantity of what is said cannot be a value of a word. */
const isRuledOut = (said: string, name: string): boolean => {
  const heard = hear(said, newJob)
  const [reading] = heard.readings
  if (!reading) throw new Error(`no quantity is read in “${said}”`)
  return isContradicted(reading, vocabulary.get(name) as Word, heard)
}

describe('the words beside a quantity', () => {
  it.each([
    ['700 mm of each below the ground', 'postAbove'],
    ['2 ft buried', 'fenceHeight'],
    ['4 ft above the grass', 'embedment'],
    ['1300 mm sticking up', 'holeDepth'],
    ['I want 12 of them', 'wantedGap'],
    ['2100 centres', 'opening'],
    ['3 m from post centre to post centre', 'gateOpening'],
    ['7 ft in the clear', 'widestBay'],
    ['my wife 62 kg, and the dog', 'pieceWeight'],
    ['just me 140', 'piecesToHaul'],
    ['13 kg per square metre', 'leafWeight'],
    ['boards lapped 20 mm', 'wantedGap'],
    ['84 lb all told', 'bagWeight'],
    ['400 mm from the middle', 'archRise'],
    ['I have $640 for it', 'unitPrices'],
    ['budget of £300', 'packPrice'],
    ['30 in deep', 'holeDiameter'],
    ['10 in across', 'holeDepth'],
    ['a metre high', 'widestBay'],
    ['shrinks 4 percent', 'moistureNow'],
    ['10 percent of the budget', 'wetBasis'],
    ['between the two posts', 'posts'],
  ])('“%s” is no %s', (said, word) => expect(isRuledOut(said, word)).toBe(true))

  it.each([
    ['700 mm of each below the ground', 'embedment'],
    ['2 ft in the ground', 'holeDepth'],
    ['4 ft above the grass', 'postAbove'],
    ['I want 12 of them', 'pickets'],
    ['2100 centres', 'bayCentres'],
    ['17.2 m from centre of the first post to centre of the last', 'runLength'],
    ['30 ft down the side to the shed', 'runLength'],
    ['7 ft in the clear', 'opening'],
    ['2 in clear of the ground', 'footGap'],
    ['my wife 62 kg, and the dog', 'weightAboard'],
    ['my wife 150 pickets', 'picketsHung'],
    ['a bag of 25 kg', 'bagWeight'],
    ['13 kg a bag', 'bagWeight'],
    ['lapped 20 mm', 'boardLap'],
    ['23 a foot for everything', 'measurePrice'],
    ['I got $4.20 each', 'unitPrices'],
    ['30 in deep', 'holeDepth'],
    ['10 in across', 'holeDiameter'],
    ['50 % of the total weight', 'wetBasis'],
    ['two posts', 'posts'],
  ])('“%s” may be %s', (said, word) => expect(isRuledOut(said, word)).toBe(false))
})
