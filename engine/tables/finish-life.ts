// This file is about how long a finish lasts on upright wood outdoors.

interface Life {
  readonly least: number
  readonly most: number
}

/** Years, by the finish’s name in the word `finishType`. */
export const finishLife = {
  fact: 'service life of finishes on upright wood outdoors, in years',
  from: 'Wood Handbook, FPL-GTR-190 (2010), table 16-5, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/374',
  values: {
    repellent: { least: 1, most: 3 },
    tinted: { least: 2, most: 3 },
    semitransparent: { least: 4, most: 8 },
    solid: { least: 6, most: 15 },
    paint: { least: 10, most: 20 },
  } as Readonly<Record<string, Life>>,
  /** One coat of semi-transparent stain on new planed wood; two coats on saw-textured wood may last ten years. */
  firstOnSmooth: { least: 2, most: 4 },
  firstOnSmoothFact: 'one coat of semi-transparent stain on new smooth wood lasts 2 to 4 years',
  firstOnSmoothFrom:
    'Wood Handbook, FPL-GTR-190 (2010), chapter 16, read at https://issuhub.com/view/index/5801?pageIndex=375',
} as const
