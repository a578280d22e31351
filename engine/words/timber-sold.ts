// This file is about what lengths the yard sells, section by section: what rails, posts and pickets are cut from.
import { word } from './word.ts'

const lengths = (name: string, of: string, things: readonly string[]) =>
  word<'length'>(name, {
    kind: 'length',
    list: true,
    label: `lengths that ${of} come in`,
    units: { imperial: 'ft', metric: 'mm' },
    measure: `Each length the yard sells to cut ${of} from.`,
    ask: `Which lengths does the yard sell to cut ${of} from?`,
    called: { things },
    unsaid: true,
    possible: { above: '0 in' },
    plausible: { from: '2 ft', to: '24 ft' },
  })

const prices = (name: string, of: string) =>
  word<'money'>(name, {
    kind: 'money',
    list: true,
    label: `prices of the lengths that ${of} come in`,
    measure: 'For one stick of each length, in the order of the lengths.',
    ask: `What does one stick of each length for the ${of} cost?`,
    called: {},
    unsaid: true,
    possible: { least: '$0' },
  })

export const railStock = lengths('railStock', 'rails', ['rail', '2x4', '2x3'])
export const railStockPrices = prices('railStockPrices', 'rails')
export const postStock = lengths('postStock', 'posts', ['post', '4x4', '6x6'])
export const postStockPrices = prices('postStockPrices', 'posts')
export const picketStock = lengths('picketStock', 'pickets', ['picket', '1x4', '1x3', '1x6'])
export const picketStockPrices = prices('picketStockPrices', 'pickets')

/** Each section of timber with the words of what is sold of it. */
export const sections = [
  { section: 'rails', stock: railStock, prices: railStockPrices },
  { section: 'posts', stock: postStock, prices: postStockPrices },
  { section: 'pickets', stock: picketStock, prices: picketStockPrices },
] as const
