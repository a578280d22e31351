// This file is about how far a pin meter's reading is off when the wood is not at the temperature its scale was made for.

/** Points of moisture for so many degrees: added in colder wood, taken off in warmer. */
export const meterCorrections = {
  handbook: {
    points: '0.5 %',
    each: '10 F°',
    name: 'the handbook',
    fact: 'half a point for each 10 F° (5.6 C°): added in colder wood, taken off in warmer',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 13, read at https://issuhub.com/view/index/5801?pageIndex=294',
  },
  maker: {
    points: '0.5 %',
    each: '5 C°',
    name: 'one maker',
    fact: 'half a point for each 5 C°',
    from: 'a meter maker’s manual',
  },
  strongest: {
    points: '1.5 %',
    each: '10 C°',
    name: 'another maker',
    fact: 'a point and a half for each 10 C°',
    from: 'another meter maker’s manual',
  },
  treated: {
    least: '1 %',
    most: '2 %',
    fact: 'wood treated with a waterborne preservative reads 1 to 2 points too high',
    from: 'a meter maker’s manual',
  },
  surface: {
    fact: 'rain or dew on the face joins the pins, so that they read too high by no known amount; frozen wood misleads them too',
    from: 'common practice, no source',
  },
} as const
