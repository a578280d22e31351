// This file is about what one address takes: known-safe fields first, and what its refusals teach.
import type { Leaning } from './schemas.ts'
import type { Body } from './speech.ts'

export interface Profile {
  readonly streams: boolean
  /** `in-words`: the tools are described in the system text. */
  readonly tools: 'offered' | 'in-words'
  readonly strict: boolean
  readonly choice: 'as-asked' | 'required' | 'unsaid'
  readonly systemRole: 'system' | 'developer' | 'user'
  /** What stands for no words beside a call. */
  readonly emptyContent: null | ''
  readonly limitName: 'max_tokens' | 'max_completion_tokens'
  /** Two messages of one role in a row are refused. */
  readonly alternates: boolean
  /** Results carry the tool's name. */
  readonly namedResults: boolean
  /** Thoughts go back with the turn they belong to. */
  readonly thoughtsBack: boolean
  readonly schemas: Leaning
  /** Fields that are left out altogether. */
  readonly without: readonly string[]
}

export const freshProfile: Profile = {
  streams: true,
  tools: 'offered',
  strict: true,
  choice: 'as-asked',
  systemRole: 'system',
  emptyContent: null,
  limitName: 'max_tokens',
  alternates: false,
  namedResults: false,
  thoughtsBack: false,
  schemas: { closed: true, nullable: 'types' },
  without: [],
}

/** A request was not taken: the status, and every word the server gave as its reason. */
export interface Refusal {
  readonly status: number
  readonly words: string
}

interface Lesson {
  readonly about: RegExp
  /** Also read from other statuses than 400 and 422: templates fail with 500, routers with 404. */
  readonly anyStatus?: boolean
  learn(profile: Profile, sent: Body, words: string): Partial<Profile> | undefined
}

const lessonStatuses = new Set([400, 404, 405, 422, 500, 501])

/**
 * The first change that this refusal asks for and that has not been tried yet; undefined where there is none.
 * `tried` holds the profiles of this request, so that no two refusals can send it to and fro.
 */
export function learn(profile: Profile, refusal: Refusal, sent: Body, tried: readonly Profile[]): Profile | undefined {
  if (!lessonStatuses.has(refusal.status)) return undefined
  const plain = refusal.status === 400 || refusal.status === 422
  for (const lesson of lessons) {
    if (!(plain || lesson.anyStatus) || !lesson.about.test(refusal.words)) continue
    const change = lesson.learn(profile, sent, refusal.words)
    const next = change && { ...profile, ...change }
    if (next && !tried.some((before) => JSON.stringify(before) === JSON.stringify(next))) return next
  }
  return undefined
}

const refused =
  /not.{0,20}(support|allow|permit|recogni|available|enabled)|unsupported|unknown|unexpected|unrecogni|invalid|extra|disabled|only|cannot|must be/i
const essential = ['model', 'messages', 'tools']

const lessons: readonly Lesson[] = [
  {
    about: /tool.?choice/i,
    anyStatus: true,
    learn: (_profile, sent, words) => {
      if (/requires --enable|tool-call-parser/.test(words) || !('tool_choice' in sent)) return undefined
      return { choice: typeof sent.tool_choice === 'object' ? 'required' : 'unsaid' }
    },
  },
  {
    about:
      /(reasoning|thinking|thought|signature).{0,80}(passed back|missing|must be|required|expected)|(missing|must|required|expected).{0,80}(reasoning|thinking|thought|signature)/i,
    learn: (profile) => (profile.thoughtsBack ? undefined : { thoughtsBack: true }),
  },
  {
    about: /max_tokens|max_completion_tokens/,
    learn: (profile, sent) =>
      profile.limitName in sent
        ? { limitName: profile.limitName === 'max_tokens' ? 'max_completion_tokens' : 'max_tokens' }
        : undefined,
  },
  {
    // Any other field that is named and was sent.
    about: /./,
    learn: (profile, sent, words) => {
      const named = Object.keys(sent).find(
        (field) =>
          !essential.includes(field) && field !== 'stream' && new RegExp(`(?<![\\w.])${field}(?!\\w)`).test(words),
      )
      return named && !profile.without.includes(named) ? { without: [...profile.without, named] } : undefined
    },
  },
  {
    about: /\bstream(ing|ed)?\b/i,
    anyStatus: true,
    learn: (profile, sent, words) =>
      profile.streams && 'stream' in sent && (refused.test(words) || /verified|param.{0,5}stream/i.test(words))
        ? { streams: false }
        : undefined,
  },
  { about: /\bstrict\b/i, learn: (profile) => (profile.strict ? { strict: false } : undefined) },
  {
    about: /additional_?properties/i,
    learn: (profile) =>
      profile.schemas.closed ? { strict: false, schemas: { ...profile.schemas, closed: false } } : undefined,
  },
  {
    about: /cannot start list|\btype\b.{0,40}(array|list)|proto field/i,
    learn: (profile, sent) =>
      'tools' in sent && profile.schemas.nullable === 'types'
        ? { schemas: { ...profile.schemas, nullable: 'anyOf' } }
        : undefined,
  },
  {
    about: /schema|grammar|guided|structured/i,
    learn: (profile, sent) => ('tools' in sent && profile.strict ? { strict: false } : undefined),
  },
  {
    about: /schema|grammar|guided|structured/i,
    learn: (profile, sent) => ('tool_choice' in sent && profile.choice !== 'unsaid' ? { choice: 'unsaid' } : undefined),
  },
  {
    about:
      /function_response\.name|\bname\b.{0,40}(tool (message|result|response)|role.{0,6}tool)|tool (message|result|response).{0,40}\bname\b/i,
    learn: (profile) => (profile.namedResults ? undefined : { namedResults: true }),
  },
  {
    about: /alternat|same role|consecutive/i,
    anyStatus: true,
    learn: (profile) => (profile.alternates ? undefined : { alternates: true, systemRole: 'user' }),
  },
  {
    about:
      /(system|developer).{0,30}(role|message|prompt|instruction)|role.{0,60}(system|developer)|only user and assistant|messages\[\d+\]\.role/i,
    anyStatus: true,
    learn: (profile, _sent, words) => {
      if (profile.systemRole === 'user') return undefined
      return { systemRole: profile.systemRole === 'system' && /developer/i.test(words) ? 'developer' : 'user' }
    },
  },
  {
    about: /\btools?\b|tool use|tool-call-parser|function.?call/i,
    anyStatus: true,
    learn: (_profile, sent, words) => {
      const without =
        /not.{0,20}(support|allow|permit|recogni|available|enabled)|unsupported|unknown|unrecogni|disabled|extra|--jinja|no endpoints|requires --enable|cannot use/i
      return 'tools' in sent && without.test(words) ? { tools: 'in-words' } : undefined
    },
  },
  {
    about: /\b(content|text|null|nil)\b/i,
    anyStatus: true,
    learn: (profile, sent, words) => {
      const empty =
        Array.isArray(sent.messages) &&
        sent.messages.some((message) => message.role === 'assistant' && !message.content)
      if (!empty || !/null|nil|none|empty|blank|string|required|missing|invalid|type/i.test(words)) return undefined
      return { emptyContent: profile.emptyContent === null ? '' : null }
    },
  },
  {
    // Nothing we know is named: once more with the barest request, unless the reason lies elsewhere.
    about:
      /^(?!.*(context.?(length|window|size)|too (long|large|many)|exceed|model.{0,60}(not.{0,10}(found|exist)|unknown|invalid)|content.?(filter|management|policy)|billing|quota|credit|api.?key))/is,
    learn: (profile, sent) => {
      const spare = Object.keys(sent).filter((field) => !essential.includes(field) && field !== 'stream')
      if (spare.length === 0 && !('tools' in sent && profile.strict)) return undefined
      return {
        strict: false,
        choice: 'unsaid',
        without: [...new Set([...profile.without, ...spare.filter((field) => field !== 'tool_choice')])],
      }
    },
  },
]
