import { caution } from './caution.ts'

export const lifting = caution({
  code: 'lifting',
  full: 'One bad lift can hurt a back for years. Over 51 lb (23 kg) is too much even at its best: split it, share it, or use the barrow. Hold it close, knees bent, and turn the feet. Sharp pain or numb legs: stop, and see a doctor.',
  standing: 'Lifting: split it, share it or use the barrow.',
  from: '51 lb: NIOSH revised lifting equation, load constant; the rest common practice, no source',
})
