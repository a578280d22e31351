import { describe, expect, it } from 'vitest'
import { furnish } from '../../src/house.ts'
import { readSettings } from '../../src/settings.ts'

describe('settings', () => {
  it('are this machine only, port 4680 and a folder beside the program, when nothing is set', () => {
    expect(readSettings({})).toEqual({
      host: '127.0.0.1',
      port: 4680,
      names: [],
      proxies: [],
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
