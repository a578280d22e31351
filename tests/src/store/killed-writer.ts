// A program that writes turns until it is killed, and says each one once the store has acknowledged it. Three of its talks grow at once.
import { writeSync } from 'node:fs'
import { openStore, type Where } from '../../../src/store/open.ts'
import { turnToKill } from './turn-to-kill.ts'

const store = await openStore(JSON.parse(process.argv[2] as string) as Where)
// One of them goes on with a talk of a program that was killed before.
const [earlier] = await store.list()
const talks = [earlier ?? (await store.create()), await store.create(), await store.create()]
await Promise.all(
  talks.map(async ({ id }) => {
    for (let n = (await store.read(id))?.written ?? 0; ; n++) {
      await store.append(id, turnToKill(id, n), n)
      writeSync(1, `${id} ${n}\n`)
    }
  }),
)
