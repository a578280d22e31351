// This file is about `npm run teach -- guard`: what the words of a sentence weigh, written down.
import { writeFileSync } from 'node:fs'
import { contradictions, harmless } from './sentences.ts'
import { weightsTaught, written } from './teach.ts'

const weights = weightsTaught(contradictions, harmless)
writeFileSync(
  'src/guard/caution-weights.ts',
  `// This file is about what words weigh, alone and two by two, for caution-sense.ts: above 0 they speak for what only the program says.
// Made by \`npm run teach -- guard\` from tests/src/guard/contradictions.txt and harmless.txt; a test holds it to them. \`^\` begins a sentence, \`$\` ends it.

export const cautionWeights = \`
${written(weights)}
\`
`,
)
process.stdout.write(`${contradictions.length + harmless.length} sentences, ${weights.size} weights\n`)
