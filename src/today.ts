// This file is about today: the day by the clock of the machine that the program runs on.

/** As 2026-11-26. */
export function today(): string {
  const now = new Date()
  const two = (part: number): string => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
