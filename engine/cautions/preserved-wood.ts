import { caution } from './caution.ts'

export const preservedWood = caution({
  code: 'preserved-wood',
  full: 'Treated or old painted wood is never burned: smoke and ash are poisonous. Saw outdoors; mask, glasses, gloves; wash before you eat. Not for mulch or animal bedding, nor where it touches food. Ask your waste office where offcuts go. Old railway sleepers, and posts from before about 2004, may hold creosote or arsenic.',
  standing: 'Treated wood: never burn it, and wear mask and gloves when you saw it.',
  from: 'https://twwdisposal.org/tww-basics/handling/; EPA consumer information in the Wood Handbook, FPL-GTR-190 (2010), which also has the end of arsenic in wood for US homes (2003); the rest common practice, no source',
})
