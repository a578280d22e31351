// How a board moves across its grain as its moisture changes, by both of the handbook's formulas.
//
//   wet    ├──────────────────┤      the width follows the moisture, below about 30 %;
//   dry     ├────────────────┤       along the grain next to nothing happens
import { calculation } from '../../calculation.ts'
import { boardEndsDrawing } from '../../drawings/board-ends.ts'
import { movedAcross, movementLines, movementLocals, movementSources } from '../../wood-movement.ts'
import { equilibriumMoisture } from '../../words/air.ts'
import { picketWidth } from '../../words/pickets.ts'
import {
  changeByCoefficient,
  changeByShrinkage,
  grain,
  moistureNow,
  species,
  widthChange,
  widthLater,
} from '../../words/wet-wood.ts'

export const boardMovement = calculation({
  name: 'board-movement',
  title: 'How a board moves across its grain',
  answers:
    'How much wider or narrower a board becomes as its moisture changes, by the handbook’s two formulas, and which of them holds.',
  needs: { picketWidth, species, grain, moistureNow, equilibriumMoisture },
  gives: { widthChange, widthLater, changeByCoefficient, changeByShrinkage },
  called: [
    'board move',
    'boards move',
    'move across',
    'wood movement',
    'movement of a board',
    'board swell',
    'shrink',
    'shrinks',
    'shrinkage',
    'swell',
    'swells',
    'swelling',
    'plank move',
  ],
  headlines: ['widthChange', 'widthLater'],
  together: {
    widthChange: ['widthChange', 'widthLater', 'changeByCoefficient', 'changeByShrinkage'],
    widthLater: ['widthLater', 'widthChange', 'changeByCoefficient', 'changeByShrinkage'],
  },
  locals: { ...movementLocals, widthChange: 'length' },
  lines: {
    ...movementLines,
    widthLater: ['picketWidth + widthChange', 'what it measures when it has settled'],
  },
  work({ picketWidth, species, grain, moistureNow, equilibriumMoisture }, tools) {
    const { line, tell, remark } = tools
    const moved = movedAcross({ across: picketWidth, species, grain }, [moistureNow, equilibriumMoisture], tools)
    tell('widthChange', moved.change)
    line('widthLater')
    tell('changeByCoefficient', moved.byCoefficient)
    tell('changeByShrinkage', moved.byShrinkage)
    remark(
      'A board that is neither quite flat nor quite edge grain moves less than the one and more than the other. Along the grain it moves next to nothing. Boards differ: measure a few.',
    )
  },
  sources: movementSources,
  cautions: [],
  drawing: boardEndsDrawing,
  examples: [
    // 232 × 0.00245 × (11 − 8) = 1.7052; the handbook prints 233.7
    {
      ask: 'How much does a 232 mm flat grain white fir board move from 8 % now to 11 % later?',
      given: {
        picketWidth: '232 mm',
        species: 'white-fir',
        grain: 'flat',
        moistureNow: '8 %',
        equilibriumMoisture: '11 %',
      },
      expect: { widthChange: '1.7052 mm', widthLater: '233.7052 mm' },
    },
    // 5.5 × 0.00234 × (12 − 19) = −0.09009; 5.5 × (12 − 19) / (3000 / 5 − 30 + 19) = −38.5 / 589; 19 % lies over 14 %
    {
      ask: 'How far does a 5 1/2 in flat grain western redcedar board move across, moisture now 19 %, settles at 12 %?',
      given: {
        picketWidth: '5 1/2 in',
        species: 'western-redcedar',
        grain: 'flat',
        moistureNow: '19 %',
        equilibriumMoisture: '12 %',
      },
      expect: { widthChange: '−0.06537 in', changeByCoefficient: '−0.09009 in', changeByShrinkage: '−0.06537 in' },
    },
  ],
})
