// This file is about counts of the server's work, in the text that scrapers read (Prometheus exposition format, 0.0.4).

interface Served {
  readonly method: string
  readonly route: string
  readonly status: number
  readonly seconds: number
}

export interface Metrics {
  count(served: Served): void
  text(): string
}

export const metricsType = 'text/plain; version=0.0.4; charset=utf-8'

/** Seconds: a sum, a whole fence, a model that thinks. */
const edges = [0.005, 0.02, 0.1, 0.5, 2, 10, 60]

export function createMetrics(retries: () => number): Metrics {
  const requests = new Map<string, number>()
  const times = new Map<string, { buckets: number[]; sum: number }>()
  return {
    count({ method, route, status, seconds }) {
      const of = `method="${method}",route="${quoted(route)}",status="${status}"`
      requests.set(of, (requests.get(of) ?? 0) + 1)
      const at = `route="${quoted(route)}"`
      const time = times.get(at) ?? { buckets: [...edges, Infinity].map(() => 0), sum: 0 }
      time.sum += seconds
      time.buckets = time.buckets.map((many, i) => many + (seconds <= (edges[i] ?? Infinity) ? 1 : 0))
      times.set(at, time)
    },
    text() {
      const { user, system } = process.cpuUsage()
      return [
        ...family('plumbpost_requests_total', 'counter', 'Requests answered.', requests),
        ...family(
          'plumbpost_request_seconds',
          'histogram',
          'From a request to the last of its answer.',
          [...times].flatMap(([at, { buckets, sum }]) => [
            ...buckets.map((many, i) => [`_bucket{${at},le="${edges[i] ?? '+Inf'}"}`, many] as const),
            [`_sum{${at}}`, sum] as const,
            [`_count{${at}}`, buckets.at(-1) ?? 0] as const,
          ]),
        ),
        ...family(
          'plumbpost_database_retries_total',
          'counter',
          'Writes that the database turned back and that were tried again.',
          [['', retries()]],
        ),
        ...family('process_resident_memory_bytes', 'gauge', 'Memory held.', [['', process.memoryUsage.rss()]]),
        ...family('process_cpu_seconds_total', 'counter', 'Processor time used.', [['', (user + system) / 1e6]]),
        ...family('process_start_time_seconds', 'gauge', 'When it began, since 1970.', [
          ['', (Date.now() - process.uptime() * 1000) / 1000],
        ]),
        '',
      ].join('\n')
    },
  }
}

/** Lines of one name: a map has labels, a list has what follows the name. */
function family(
  name: string,
  type: 'counter' | 'gauge' | 'histogram',
  help: string,
  values: ReadonlyMap<string, number> | readonly (readonly [string, number])[],
): string[] {
  const lines =
    values instanceof Map ? [...values].map(([of, value]) => [`{${of}}`, value] as const) : [...(values as [])]
  return [`# HELP ${name} ${help}`, `# TYPE ${name} ${type}`, ...lines.map(([of, value]) => `${name}${of} ${value}`)]
}

const quoted = (text: string): string => text.replace(/\\/g, '\\\\').replace(/"/g, '\\"').replace(/\n/g, '\\n')
