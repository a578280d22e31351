// This file is about the heading of a column: what it is called, and its unit where the name does not say it.
import type { Table } from '../../engine/index.ts'

export const headOf = ({ label, unit }: Table['columns'][number]): string =>
  unit === '' || unit === 'date' || label.includes(unit) ? label : `${label} (${unit})`
