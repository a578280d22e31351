// This file is about what has been published on how dry and how fresh wood should be before it is finished.

const handbook = 'Wood Handbook, FPL-GTR-190 (2010), chapter 16'

export const finishLimits = {
  service: {
    fact: 'paint when the wood is near the moisture it will have in use, about 12 % in most of the US and Canada',
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/362`,
  },
  upper: {
    value: '20 %',
    fact: 'over 20 % the risk of blistering and peeling rises',
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/362`,
  },
  wanted: {
    fact: '12 to 15 % is wanted before finishing outdoors',
    from: 'Iowa State University Extension, https://www.extension.iastate.edu/forestry/forest_products/finishext.html',
  },
  fresh: {
    value: '2 weeks',
    fact: 'the first film coat goes on smooth planed wood within two weeks of its being exposed',
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378`,
  },
  water: {
    most: '30 seconds',
    fact: 'water that soaks in within about half a minute says the face will take a finish; beading may be wet wood, mill glaze or a factory repellent',
    from: 'common practice, no standard',
  },
  meter: {
    least: '6 %',
    most: '30 %',
    fact: 'a pin meter can be relied on from about 6 to 30 %',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 13, read at https://issuhub.com/view/index/5801?pageIndex=294',
  },
} as const
