import { describe, expect, it } from 'vitest'
import { furnish } from '../../src/house.ts'
import { limitsAlone, limitsAmongOthers, readSettings } from '../../src/settings.ts'

describe('settings', () => {
  it('are this machine only, port 4680 and a folder beside the program, when nothing is set', () => {
    expect(readSettings({})).toEqual({
      host: '127.0.0.1',
      port: 4680,
      names: [],
      proxies: [],
      limits: limitsAlone,
      log: 'faults',
      store: { dataFolder: '.plumbpost' },
    })
  })

  it('a key alone sends nothing anywhere', () => {
    const settings = readSettings({ OPENAI_API_KEY: 'secret', OPENAI_BASE_URL: 'http://model.test/v1' })
    expect(settings.model).toBeUndefined()
    expect(furnish(settings)).toMatchObject({ front: 'offline', reads: 'Questions are read on this machine.' })
  })

  it('a model is named, and the address that questions go to is said, without the key', () => {
    const house = furnish(
      readSettings({ PLUMBPOST_MODEL: 'm', OPENAI_API_KEY: 'secret', OPENAI_BASE_URL: 'http://model.test/v1' }),
    )
    expect(house.front).toBe('model')
    expect(house.reads).toContain('http://model.test/v1')
    expect(house.reads).not.toContain('secret')
  })

  it('the secret that lets people in is read; an empty one is none', () => {
    expect(readSettings({ PLUMBPOST_SECRET: 'abc' }).secret).toBe('abc')
    expect(readSettings({ PLUMBPOST_SECRET: '' })).not.toHaveProperty('secret')
  })

  it('who is alone on their machine is not counted; among others everything is, and each number can be set', () => {
    const among = { PLUMBPOST_SECRET: '0123456789abcdef01234567' }
    expect(readSettings(among).limits).toEqual(limitsAmongOthers)
    expect(Object.values(limitsAmongOthers).every(Number.isFinite)).toBe(true)
    for (const [name, field] of [
      ['BYTES', 'bytes'],
      ['CHARACTERS', 'characters'],
      ['TURNS', 'turns'],
      ['TURNS_A_MINUTE', 'turnsAMinute'],
      ['AT_ONCE', 'atOnce'],
      ['TALKS', 'talks'],
      ['TOKENS', 'tokens'],
      ['TOKENS_A_DAY', 'tokensADay'],
      ['WRONG_SECRETS', 'wrongSecrets'],
    ] as const) {
      const setting = `PLUMBPOST_MOST_${name}`
      expect(readSettings({ ...among, [setting]: '7' }).limits, name).toEqual({ ...limitsAmongOthers, [field]: 7 })
      expect(readSettings({ [setting]: '7' }).limits, name).toEqual({ ...limitsAlone, [field]: 7 })
      for (const nonsense of ['0', '-1', 'many', '1.5'])
        expect(() => readSettings({ [setting]: nonsense }), nonsense).toThrow(setting)
    }
  })

  it('names and proxies are told with commas between', () => {
    expect(readSettings({ PLUMBPOST_NAME: 'fence.test, club.test,', PLUMBPOST_PROXY: '127.0.0.1' })).toMatchObject({
      names: ['fence.test', 'club.test'],
      proxies: ['127.0.0.1'],
    })
  })

  it('a slow model is given more seconds', () => {
    expect(readSettings({ PLUMBPOST_MODEL: 'm', PLUMBPOST_PATIENCE: '300' }).model).toEqual({
      model: 'm',
      timeoutMs: 300_000,
    })
    expect(() => readSettings({ PLUMBPOST_MODEL: 'm', PLUMBPOST_PATIENCE: 'long' })).toThrow('PLUMBPOST_PATIENCE')
  })

  it('PLUMBPOST_FRONT forces one, and a forced model that is not named is said', () => {
    expect(readSettings({ PLUMBPOST_MODEL: 'm', PLUMBPOST_FRONT: 'offline' }).model).toBeUndefined()
    expect(() => readSettings({ PLUMBPOST_FRONT: 'model' })).toThrow('PLUMBPOST_MODEL names none')
  })

  it('a database takes the place of the folder; empty values count as unset; nonsense is said', () => {
    expect(readSettings({ DATABASE_URL: 'postgres://db', PORT: '', PLUMBPOST_MODEL: '' })).toMatchObject({
      store: { databaseUrl: 'postgres://db' },
      port: 4680,
    })
    expect(() => readSettings({ PORT: 'front' })).toThrow('PORT')
  })
})
