// That what is written for whoever runs the server holds: settings, ports, files and tests that it names are there.
import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readSettings, settingNames } from '../src/settings.ts'

const read = (path: string): string => readFileSync(path, 'utf8')
const container = read('.deploy/Containerfile')
const unit = read('.deploy/plumbpost.service')
const proxy = read('.deploy/proxy.conf')
const all = [container, unit, proxy, read('.deploy/README.md')]

describe('what is written for whoever runs the server', () => {
  it('names no setting that is not one, and the README names each of them', () => {
    const named = all.flatMap((it) =>
      [...it.matchAll(/\b(?:PLUMBPOST|OPENAI)_[A-Z_]+|\bDATABASE_URL\b/g)].map(([name]) => name),
    )
    expect(new Set(named).size).toBeGreaterThan(5)
    expect(named.filter((it) => !settingNames.includes(it))).toEqual([])
    const readme = read('README.md')
    expect(settingNames.filter((it) => !readme.includes(`\`${it}\``))).toEqual([])
  })

  it('has the port that the server has when none is set', () => {
    const { port } = readSettings({})
    const ports = all.flatMap((it) =>
      [...it.matchAll(/(?:PORT=|EXPOSE |127\.0\.0\.1:)(\d+)/g)].map(([, it]) => Number(it)),
    )
    expect(ports.length).toBeGreaterThan(5)
    expect([...new Set(ports)]).toEqual([port])
  })

  it('the container holds what runs and nothing else, not as root, and says whether it is well', () => {
    const [build = '', run = ''] = container.split(/^FROM .*$/m).slice(1)
    const copied = [...run.matchAll(/^COPY (?:--from=build \/plumbpost\/)?(\S+)/gm)].map(([, it = '']) => it)
    expect(copied).toEqual([
      'package.json',
      'node_modules',
      'dist',
      'src/readers/offline/taught/weights.json',
      'prompts',
    ])
    const brought = [...build.matchAll(/^COPY (.+) \S+$/gm)].flatMap(([, it = '']) => it.split(' '))
    for (const path of [...brought, ...copied.filter((it) => !/^(dist|node_modules)$/.test(it))])
      expect(existsSync(path), path).toBe(true)
    expect(`${build}${run}`).not.toMatch(/COPY \.git|COPY \. |PLUMBPOST_SECRET=|API_KEY=/)
    expect(run.indexOf('USER node')).toBeGreaterThan(0)
    expect(run).toMatch(/HEALTHCHECK .*\/readyz/s)
    // CMD, HEALTHCHECK: in JSON, so that a signal reaches the server and no shell.
    expect(JSON.parse(/^CMD (\[.*\])$/m.exec(run)?.[1] ?? '')).toEqual(['node', 'dist/server.mjs'])
  })

  it('the unit gives the server a user and a folder of its own, and no secret', () => {
    const lines = unit.split('\n').filter((it) => it !== '' && !it.startsWith('#'))
    expect(lines.filter((it) => !/^(\[(Unit|Service|Install)\]|[A-Z][A-Za-z]+=\S.*)$/.test(it))).toEqual([])
    for (const it of ['DynamicUser=yes', 'StateDirectory=plumbpost', 'ProtectSystem=strict', 'NoNewPrivileges=yes'])
      expect(lines).toContain(it)
    expect(lines.join('\n')).not.toMatch(/SECRET|API_KEY/)
  })

  it('the proxy speaks no older TLS, sends plain requests on to it, and holds no stream back', () => {
    expect(proxy.match(/\{/g)?.length).toBe(proxy.match(/\}/g)?.length)
    for (const it of [
      'ssl_protocols TLSv1.2 TLSv1.3;',
      'return 301 https://',
      'proxy_buffering off;',
      'proxy_set_header Host $host;',
      'X-Forwarded-For $proxy_add_x_forwarded_for;',
      'X-Forwarded-Proto $scheme;',
    ])
      expect(proxy).toContain(it)
  })
})

describe('the table of what is held', () => {
  const table = read('.deploy/security.md')

  it('names tests that are there, by the names they have', () => {
    const named = [...table.matchAll(/`(tests\/[^`]+)` “([^”]+)”/g)].map(([, file = '', title = '']) => ({
      file,
      title,
    }))
    expect(named.length).toBeGreaterThan(60)
    // A long title stands on a line of its own.
    const titles = (file: string): string => read(file).replaceAll(/\(\s+'/g, "('")
    expect(named.filter(({ file, title }) => !titles(file).includes(`('${title}'`))).toEqual([])
  })

  it('has every item of level 1, and says of each by what it is held, or why not', () => {
    // OWASP Application Security Verification Standard 5.0.0, the English table, column L = 1: seventy items.
    const level1: Record<string, string> = {
      '1.2': '1 2 3 4 5',
      '1.3': '1 2',
      '1.5': '1',
      '2.1': '1',
      '2.2': '1 2',
      '2.3': '1',
      '3.2': '1 2',
      '3.3': '1',
      '3.4': '1 2',
      '3.5': '1 2 3',
      '4.1': '1',
      '4.4': '1',
      '5.2': '1 2',
      '5.3': '1 2',
      '6.1': '1',
      '6.2': '1 2 3 4 5 6 7 8',
      '6.3': '1 2',
      '6.4': '1 2',
      '7.2': '1 2 3 4',
      '7.4': '1 2',
      '8.1': '1',
      '8.2': '1 2',
      '8.3': '1',
      '9.1': '1 2 3',
      '9.2': '1',
      '10.4': '1 2 3 4 5',
      '11.3': '1 2',
      '11.4': '1',
      '12.1': '1',
      '12.2': '1 2',
      '13.4': '1',
      '14.2': '1',
      '14.3': '1',
      '15.1': '1',
      '15.2': '1',
      '15.3': '1',
    }
    const ids = Object.entries(level1).flatMap(([section, items]) => items.split(' ').map((it) => `${section}.${it}`))
    expect(ids).toHaveLength(70)
    const [, first = ''] = table.split(/^## /m)
    expect(ids.filter((it) => !new RegExp(`(?<![\\d.])${it.replaceAll('.', '\\.')}(?![\\d])`).test(first))).toEqual([])
    const rows = first.split('\n').filter((it) => /^\| \d/.test(it))
    expect(rows.filter((it) => !/“|does not apply|no test: |whoever runs/.test(it.split('|')[3] ?? ''))).toEqual([])
    expect([...table.matchAll(/^\| (LLM\d\d) /gm)].map(([, it]) => it)).toEqual(
      ['01', '02', '03', '04', '05', '06', '07', '08', '09', '10'].map((it) => `LLM${it}`),
    )
  })
})
