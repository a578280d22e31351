// This file is about all the evidence there is, by subject, in the order a job meets them.
import type { Check } from './check.ts'
import { asToldChecks } from './checks/as-told.ts'
import { borderChecks } from './checks/border.ts'
import { capsChecks } from './checks/caps.ts'
import { cuttingChecks } from './checks/cutting.ts'
import { concreteChecks } from './checks/concrete.ts'
import { diggingChecks } from './checks/digging.ts'
import { fenceChecks } from './checks/fence.ts'
import { finishChecks } from './checks/finish.ts'
import { frameChecks } from './checks/frame.ts'
import { gatesChecks } from './checks/gates.ts'
import { groundChecks } from './checks/ground.ts'
import { layoutChecks } from './checks/layout.ts'
import { lengthChecks } from './checks/lengths.ts'
import { lessAskedChecks } from './checks/less-asked.ts'
import { loadAndPaceChecks } from './checks/loads-and-paces.ts'
import { moneyChecks } from './checks/money.ts'
import { picketsChecks } from './checks/pickets.ts'
import { plainChecks } from './checks/plain.ts'
import { repairChecks } from './checks/repair.ts'
import { siteChecks } from './checks/site.ts'
import { embedmentChecks } from './checks/embedment.ts'
import { strengthChecks } from './checks/strength.ts'
import { layoutToldChecks } from './checks/layout-told.ts'
import { toldPlainlyChecks } from './checks/told-plainly.ts'
import { windChecks } from './checks/wind.ts'
import { surveyChecks } from './checks/survey.ts'
import { timeChecks } from './checks/time.ts'
import { topsChecks } from './checks/tops.ts'
import { woodChecks } from './checks/wood.ts'

export const checks: readonly Check[] = [
  ...siteChecks,
  ...surveyChecks,
  ...layoutChecks,
  ...lengthChecks,
  ...groundChecks,
  ...concreteChecks,
  ...diggingChecks,
  ...frameChecks,
  ...picketsChecks,
  ...topsChecks,
  ...gatesChecks,
  ...capsChecks,
  ...borderChecks,
  ...asToldChecks,
  ...layoutToldChecks,
  ...toldPlainlyChecks,
  ...woodChecks,
  ...finishChecks,
  ...windChecks,
  ...embedmentChecks,
  ...strengthChecks,
  ...repairChecks,
  ...moneyChecks,
  ...loadAndPaceChecks,
  ...cuttingChecks,
  ...fenceChecks,
  ...timeChecks,
  ...plainChecks,
  ...lessAskedChecks,
]
