// This file is about `npm run teach`: the weights that the sentences teach are written down.
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { weightsTaught, written } from './lessons.ts'

const folder = join(process.argv[2] ?? '.', 'src/readers/offline/taught')
const weights = weightsTaught(folder)
writeFileSync(join(folder, 'weights.json'), written(weights))
process.stdout.write(
  `${weights.asks.sentences.reduce((sum, it) => sum + it, 0)} sentences, ${Object.keys(weights.asks.seen).length} features of questions, ${Object.keys(weights.binds).length} of quantities\n`,
)
