// This file is about assigning: each quantity to one word, or to none, so that all together are as sure as can be.
// The method is the Hungarian one (H. W. Kuhn, 1955), with potentials: rows are taken one by one, each along the cheapest chain of changes.

/** For each row the column that it is given, where the sum of `gain` is greatest. There are at least as many columns as rows. */
export function bestAssignment(gain: readonly (readonly number[])[]): number[] {
  const rows = gain.length
  const columns = gain[0]?.length ?? 0
  const rowOf = new Int32Array(columns + 1).fill(-1)
  const [u, v] = [new Float64Array(rows + 1), new Float64Array(columns + 1)]
  for (let row = 0; row < rows; row++) {
    // The column past the last stands for the row that is being placed.
    rowOf[columns] = row
    let column = columns
    const least = new Float64Array(columns).fill(Number.POSITIVE_INFINITY)
    const before = new Int32Array(columns).fill(-1)
    const used = new Uint8Array(columns + 1)
    do {
      used[column] = 1
      const at = rowOf[column] as number
      let step = Number.POSITIVE_INFINITY
      let next = -1
      for (let j = 0; j < columns; j++) {
        if (used[j]) continue
        const cost = -((gain[at] as readonly number[])[j] as number) - (u[at] as number) - (v[j] as number)
        if (cost < (least[j] as number)) {
          least[j] = cost
          before[j] = column
        }
        if ((least[j] as number) < step) {
          step = least[j] as number
          next = j
        }
      }
      for (let j = 0; j <= columns; j++)
        if (used[j]) {
          const own = rowOf[j] as number
          u[own] = (u[own] as number) + step
          v[j] = (v[j] as number) - step
        } else if (j < columns) least[j] = (least[j] as number) - step
      column = next
    } while (rowOf[column] !== -1)
    while (column !== columns) {
      const from = before[column] as number
      rowOf[column] = rowOf[from] as number
      column = from
    }
  }
  const given: number[] = Array(rows).fill(-1)
  for (let j = 0; j < columns; j++) if ((rowOf[j] as number) >= 0) given[rowOf[j] as number] = j
  return given
}
