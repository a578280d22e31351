// This file is about which notes there are, in the order a job meets them.
import { borders } from './borders.ts'
import { buriedLines } from './buried-lines.ts'
import { buyingAndHauling } from './buying-and-hauling.ts'
import { drying } from './drying.ts'
import { emergencies } from './emergencies.ts'
import { finish } from './finish.ts'
import { gates } from './gates.ts'
import { hardware } from './hardware.ts'
import { holes } from './holes.ts'
import { idea } from './idea.ts'
import { layoutOnPaper } from './layout-on-paper.ts'
import { layoutOnSite } from './layout-on-site.ts'
import { lotLine } from './lot-line.ts'
import type { Note } from './note.ts'
import { pickets } from './pickets.ts'
import { planning } from './planning.ts'
import { plumbAndBrace } from './plumb-and-brace.ts'
import { rails } from './rails.ts'
import { repair } from './repair.ts'
import { rules } from './rules.ts'
import { settingPosts } from './setting-posts.ts'
import { slopes } from './slopes.ts'
import { surveying } from './surveying.ts'
import { tops } from './tops.ts'
import { upkeep } from './upkeep.ts'
import { wood } from './wood.ts'

/** Every note, by stage of the job. */
export const notes: readonly Note[] = [
  ...emergencies,
  ...idea,
  ...rules,
  ...lotLine,
  ...buriedLines,
  ...surveying,
  ...layoutOnPaper,
  ...layoutOnSite,
  ...wood,
  ...hardware,
  ...holes,
  ...settingPosts,
  ...plumbAndBrace,
  ...rails,
  ...pickets,
  ...tops,
  ...slopes,
  ...gates,
  ...borders,
  ...drying,
  ...finish,
  ...planning,
  ...buyingAndHauling,
  ...upkeep,
  ...repair,
]

/** The note of that name; nothing where there is none. */
export const noteNamed = (name: string): Note | undefined => notes.find((it) => it.name === name)
