// This file is about the evidence in the terminal where the package is installed: the report that was made with it. In a clone `npm run evidence` makes it anew.
import { inWords } from '../evidence.ts'
import { keptEvidence } from '../kept-evidence.ts'

const evidence = keptEvidence(new URL('.', import.meta.url))
if (evidence)
  process.stdout.write(process.argv.includes('--json') ? `${JSON.stringify(evidence)}\n` : inWords(evidence))
else {
  process.stderr.write('The report has not been made here yet: npm run evidence\n')
  process.exitCode = 1
}
