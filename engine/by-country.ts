// This file is about wordings that hold in one country and not in the next: whom to ask before digging, which number to ring.
// A telephone number is right in its own country alone, and is not shown in another.
/** Where the fence stands, as far as numbers to ring and rules differ by it. */
export type Country = 'us' | 'canada' | 'uk' | 'ireland' | 'europe' | 'australia' | 'new-zealand' | 'elsewhere'

/** One wording for each country that has its own; `unknown` while nobody has said which it is, `elsewhere` for those not listed. */
export type ByCountry = Readonly<Partial<Record<Country, string>> & Record<'unknown' | 'elsewhere', string>>

/** The wording that holds there. */
export const wordingIn = (by: ByCountry, country: Country | undefined): string =>
  country === undefined ? by.unknown : (by[country] ?? by.elsewhere)

/** Whom to ask where the lines are buried. US: digline.com; Canada: novascotia.ca and healthpei.ca (811 is a health line); byda.com.au; chorus.co.nz (beforeUdig); lsbud.co.uk. */
export const digService: ByCountry = {
  unknown:
    'US 811, free; Canada your province’s one-call centre (811 there is mostly a health line); Australia byda.com.au; New Zealand beforeUdig.co.nz; UK lsbud.co.uk; elsewhere the network companies',
  elsewhere: 'your country’s dig service, or else each network company',
  us: 'call 811, it is free',
  canada: 'your province’s one-call centre, it is free',
  uk: 'lsbud.co.uk, and the owners that it tells you to ask separately',
  ireland: 'Gas Networks Ireland, ESB Networks, and the water and telephone companies',
  australia: 'byda.com.au, it is free',
  'new-zealand': 'beforeUdig.co.nz, and the owners that it tells you to ask separately',
}

/** The emergency number. Common practice of each country, no source. */
export const emergencyNumber: ByCountry = {
  unknown:
    'ring the emergency number: 911 in the US and Canada, 999 in the UK, 112 in Europe, 000 in Australia, 111 in New Zealand',
  elsewhere: 'ring your country’s emergency number',
  us: 'ring 911',
  canada: 'ring 911',
  uk: 'ring 999',
  ireland: 'ring 112 or 999',
  europe: 'ring 112',
  australia: 'ring 000',
  'new-zealand': 'ring 111',
}

/** The gas company’s own emergency line: northerngasnetworks.co.uk (Great Britain), a broker’s page on gas escapes (Northern Ireland). */
export const gasCompany: ByCountry = {
  unknown: 'the gas company: 0800 111 999 in Great Britain, 0800 002 001 in Northern Ireland, elsewhere your own',
  elsewhere: 'the gas company',
  uk: 'the gas company: 0800 111 999 in Great Britain, 0800 002 001 in Northern Ireland',
}
