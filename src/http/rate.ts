// This file is about how often something may be done in a minute, counted apart for everybody who does it.

/** Who asks under ever new names must not fill the memory: the longest quiet is forgotten first. */
const mostKnown = 10_000

export class Rate {
  private readonly times = new Map<string, number[]>()

  constructor(
    private readonly most: number,
    private readonly windowMs = 60_000,
    /** Never goes back, whatever happens to the clock on the wall. */
    private readonly now: () => number = () => performance.now(),
  ) {}

  /** Seconds until it may be done again; 0 where it may be done now. */
  wait(who: string): number {
    const times = this.recent(who)
    const oldest = times.at(-this.most)
    return oldest === undefined ? 0 : Math.max(1, Math.ceil((oldest + this.windowMs - this.now()) / 1000))
  }

  count(who: string): void {
    const times = this.recent(who)
    this.times.delete(who)
    this.times.set(who, [...times, this.now()].slice(-this.most))
    const [quietest] = this.times.keys()
    if (this.times.size > mostKnown && quietest !== undefined) this.times.delete(quietest)
  }

  private recent(who: string): readonly number[] {
    const from = this.now() - this.windowMs
    return (this.times.get(who) ?? []).filter((it) => it > from)
  }
}
