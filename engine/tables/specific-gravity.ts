// This file is about how heavy dry wood is against water, for each kind of wood that the program knows.

export const specificGravity = {
  title: 'Specific gravity by the volume when green, and at 12 % moisture',
  from: 'Wood Handbook, FPL-GTR-190 (2010), table 5-3: northern white-cedar as quoted at engdatabase.com; at 12 %, Douglas-fir and western hemlock as quoted by Oregon State, southern pine (loblolly) in TM 5-852-4 and black locust in a public copy; the rest, with all green figures but one, from memory, to be confirmed',
  spread: 'boards of one kind differ by a tenth and more either way',
  water: {
    density: '1000 kg/m3',
    fact: 'density = water × specific gravity × (1 + moisture), the gravity by the volume at that moisture',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 4, as quoted with an example at https://oakmissouri.org/forestfunction/density.html',
  },
  values: {
    'western-redcedar': { green: '0.31', at12: '0.32' },
    'northern-white-cedar': { green: '0.29', at12: '0.31' },
    redwood: { green: '0.34', at12: '0.35' },
    'southern-pine': { green: '0.47', at12: '0.51' },
    'douglas-fir': { green: '0.45', at12: '0.48' },
    'western-hemlock': { green: '0.42', at12: '0.45' },
    'white-fir': { green: '0.37', at12: '0.39' },
    'black-locust': { green: '0.66', at12: '0.69' },
    'white-ash': { green: '0.55', at12: '0.60' },
  } as Readonly<Record<string, { readonly green: string; readonly at12: string }>>,
} as const
