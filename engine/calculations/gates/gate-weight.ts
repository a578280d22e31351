// What a gate weighs: the wood of all its parts, and how heavy that wood is.
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { quantity } from '../../quantities/quantity.ts'
import {
  gatePartCounts,
  gatePartLengths,
  gatePartThicknesses,
  gatePartWidths,
  leafWood,
} from '../../words/gate-parts.ts'
import { leafWeight } from '../../words/gate-weight.ts'
import { woodDensity } from '../../words/rail-sag.ts'

export const gateWeight = calculation({
  name: 'gate-weight',
  title: 'What a gate weighs',
  answers: 'How heavy the leaf of a gate is: its pickets, rails and brace by their sizes, and how heavy the wood is.',
  needs: { gatePartCounts, gatePartLengths, gatePartWidths, gatePartThicknesses, woodDensity },
  gives: { leafWeight, leafWood },
  headlines: ['leafWeight'],
  together: { leafWeight: ['leafWeight', 'leafWood'] },
  lines: {
    leafWood: [
      'sum(gatePartCounts * gatePartLengths * gatePartWidths * gatePartThicknesses)',
      'every part’s number, length, width and thickness',
    ],
    leafWeight: ['leafWood * woodDensity', 'so heavy is the wood'],
  },
  work({ woodDensity }, { line, rows, refuse, remark }) {
    const many = rows('gatePartCounts').length
    for (const name of ['gatePartLengths', 'gatePartWidths', 'gatePartThicknesses'] as const)
      if (rows(name).length !== many)
        refuse(
          name,
          `I have ${show(quantity(many, 'part'))} and ${show(quantity(rows(name).length, 'size'))} here. Give each part its number, length, width and thickness.`,
        )
    line('leafWood')
    line('leafWeight')
    remark(
      `That is its wood alone, at ${show(woodDensity)}: hinges, latch and screws come on top. Wood fresh from the yard may weigh half as much again.`,
    )
  },
  sources: [{ fact: 'weight = volume × density', from: 'Plain arithmetic; needs no table.' }],
  cautions: ['lifting'],
  examples: [
    // 10 × 48 × 3.5 × 0.75 = 1260; 2 × 40 × 3.5 × 1.5 = 420; 1 × 60 × 3.5 × 1.5 = 315; 1995 in³ = 1.15451 ft³; × 36 = 41.5625
    {
      ask: 'How heavy is the gate? 10 pickets 48 in by 3 1/2 in by 3/4 in, 2 rails 40 in by 3 1/2 in by 1 1/2 in, 1 brace 60 in by 3 1/2 in by 1 1/2 in, the wood weighs 36 lb a cubic foot.',
      given: {
        gatePartCounts: ['10', '2', '1'],
        gatePartLengths: ['48 in', '40 in', '60 in'],
        gatePartWidths: ['3 1/2 in', '3 1/2 in', '3 1/2 in'],
        gatePartThicknesses: ['3/4 in', '1 1/2 in', '1 1/2 in'],
        woodDensity: '36 lb/ft3',
      },
      expect: { leafWeight: '41.5625 lb', leafWood: '1.155 ft³' },
    },
    // 9 × 1.2 × 0.07 × 0.02 = 0.01512; 2 × 1 × 0.09 × 0.045 = 0.0081; 0.02322 m³ × 500 = 11.61 kg
    {
      ask: 'What does my gate weigh: 9 pickets 1200 mm long, 70 mm wide and 20 mm thick, 2 rails 1000 mm long, 90 mm wide and 45 mm thick, timber of 500 kg/m3?',
      given: {
        gatePartCounts: ['9', '2'],
        gatePartLengths: ['1200 mm', '1000 mm'],
        gatePartWidths: ['70 mm', '90 mm'],
        gatePartThicknesses: ['20 mm', '45 mm'],
        woodDensity: '500 kg/m3',
      },
      expect: { leafWeight: '11.61 kg', leafWood: '23.22 L' },
    },
  ],
})
