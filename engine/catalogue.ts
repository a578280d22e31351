// This file is about which calculations there are: one line each, in the order a job meets them.
import type { Calculation } from './calculation.ts'
import { brickEdge } from './calculations/border/brick-edge.ts'
import { castEdge } from './calculations/border/cast-edge.ts'
import { edgeFabric } from './calculations/border/edge-fabric.ts'
import { stoneStrip } from './calculations/border/stone-strip.ts'
import { stripBed } from './calculations/border/strip-bed.ts'
import { builtUpCap } from './calculations/caps/built-up-cap.ts'
import { capBlanks } from './calculations/caps/cap-blanks.ts'
import { capForPost } from './calculations/caps/cap-for-post.ts'
import { chamfers } from './calculations/caps/chamfers.ts'
import { pyramidCap } from './calculations/caps/pyramid-cap.ts'
import { slopedPostTop } from './calculations/caps/sloped-post-top.ts'
import { airForPaint } from './calculations/finish/air-for-paint.ts'
import { dewPointOfAir } from './calculations/finish/dew-point.ts'
import { finishAreaOf } from './calculations/finish/finish-area.ts'
import { coatsByClock } from './calculations/finish/coats-by-clock.ts'
import { finishByFace } from './calculations/finish/finish-by-face.ts'
import { finishQuantity } from './calculations/finish/finish-quantity.ts'
import { paintWindow } from './calculations/finish/paint-window.ts'
import { paintingByArea } from './calculations/finish/painting-by-area.ts'
import { paintingHours } from './calculations/finish/painting-hours.ts'
import { recoatCalendar } from './calculations/finish/recoat-calendar.ts'
import { leaningWallCut } from './calculations/frame/leaning-wall-cut.ts'
import { picketScrews } from './calculations/frame/picket-screws.ts'
import { railBrackets } from './calculations/frame/rail-brackets.ts'
import { railSag } from './calculations/frame/rail-sag.ts'
import { railHeights } from './calculations/frame/rail-heights.ts'
import { railsAcrossFaces } from './calculations/frame/rails-across-faces.ts'
import { railsBetweenPosts } from './calculations/frame/rails-between-posts.ts'
import { screwLength } from './calculations/frame/screw-length.ts'
import { bagsByHole } from './calculations/ground/bags-by-hole.ts'
import { bagsForVolume } from './calculations/ground/bags-for-volume.ts'
import { belledHole } from './calculations/ground/belled-hole.ts'
import { crownedTop } from './calculations/ground/crowned-top.ts'
import { concreteWait } from './calculations/ground/concrete-wait.ts'
import { diggingByRate } from './calculations/ground/digging-by-rate.ts'
import { diggingHours } from './calculations/ground/digging-hours.ts'
import { haulTrips } from './calculations/ground/haul-trips.ts'
import { looseInBags } from './calculations/ground/loose-in-bags.ts'
import { loadOverhang } from './calculations/ground/load-overhang.ts'
import { holeWidthByRule } from './calculations/ground/hole-width-by-rule.ts'
import { holesFilled } from './calculations/ground/holes-filled.ts'
import { liftingCheck } from './calculations/ground/lifting-check.ts'
import { mixedLoad } from './calculations/ground/mixed-load.ts'
import { mixWater } from './calculations/ground/mix-water.ts'
import { siteMix } from './calculations/ground/site-mix.ts'
import { spoilOfHoles } from './calculations/ground/spoil-of-holes.ts'
import { bagYieldByWeight } from './calculations/ground/bag-yield.ts'
import { concreteForPosts } from './calculations/ground/concrete-for-posts.ts'
import { gravelForHoles } from './calculations/ground/gravel-for-holes.ts'
import { postAboveOf } from './calculations/ground/post-above.ts'
import { postAsBought } from './calculations/ground/post-as-bought.ts'
import { postDepth } from './calculations/ground/post-depth.ts'
import { postDepthCheck } from './calculations/ground/post-depth-check.ts'
import { postSplit } from './calculations/ground/post-split.ts'
import { postInParts } from './calculations/ground/post-in-parts.ts'
import { holeToFrost } from './calculations/ground/hole-to-frost.ts'
import { bayPatterns } from './calculations/layout/bay-patterns.ts'
import { baysInRun } from './calculations/layout/bays-in-run.ts'
import { railsOfFence } from './calculations/frame/rails-of-fence.ts'
import { picketsOfFence } from './calculations/pickets/pickets-of-fence.ts'
import { stepOfRun } from './calculations/layout/step-of-run.ts'
import { runsFromPoints } from './calculations/site/runs-from-points.ts'
import { openingOfBay } from './calculations/layout/opening-of-bay.ts'
import { lineLeft } from './calculations/layout/line-left.ts'
import { postsGiven } from './calculations/layout/posts-given.ts'
import { runsApart } from './calculations/layout/runs-apart.ts'
import { postsOfFence } from './calculations/layout/posts-of-fence.ts'
import { runInPieces } from './calculations/layout/run-in-pieces.ts'
import { runSetOut } from './calculations/layout/run-set-out.ts'
import { baysRoundCorners } from './calculations/layout/bays-round-corners.ts'
import { cornerPost } from './calculations/layout/corner-post.ts'
import { curveByChords } from './calculations/layout/curve-by-chords.ts'
import { movedPost } from './calculations/layout/moved-post.ts'
import { postHeights } from './calculations/layout/post-heights.ts'
import { rakedRun } from './calculations/layout/raked-run.ts'
import { steppedRun } from './calculations/layout/stepped-run.ts'
import { asManyGaps } from './calculations/pickets/as-many-gaps.ts'
import { baysAlike } from './calculations/pickets/bays-alike.ts'
import { boardOnBoard } from './calculations/pickets/board-on-board.ts'
import { buttedBoards } from './calculations/pickets/butted-boards.ts'
import { gapLater } from './calculations/pickets/gap-later.ts'
import { gapNow } from './calculations/pickets/gap-now.ts'
import { lappedBoards } from './calculations/pickets/lapped-boards.ts'
import { picketCount } from './calculations/pickets/picket-count.ts'
import { picketLengthOf } from './calculations/pickets/picket-length.ts'
import { picketsFromBoards } from './calculations/pickets/pickets-from-boards.ts'
import { picketsByLength } from './calculations/pickets/pickets-by-length.ts'
import { picketsAMetre } from './calculations/pickets/pickets-a-metre.ts'
import { picketsPastPosts } from './calculations/pickets/pickets-past-posts.ts'
import { picketsTouchingPosts } from './calculations/pickets/pickets-touching-posts.ts'
import { seeThrough } from './calculations/pickets/see-through.ts'
import { stickErrors } from './calculations/pickets/stick-errors.ts'
import { storyStick } from './calculations/pickets/story-stick.ts'
import { gapForPickets } from './calculations/pickets/gap-for-pickets.ts'
import { picketSpacing } from './calculations/pickets/picket-spacing.ts'
import { leanTrend } from './calculations/repair/lean-trend.ts'
import { postLean } from './calculations/repair/post-lean.ts'
import { resettingHours } from './calculations/repair/reset-hours.ts'
import { rotLeft } from './calculations/repair/rot-left.ts'
import { sagTriage } from './calculations/repair/sag-triage.ts'
import { sisterOrReplace } from './calculations/repair/sister-or-replace.ts'
import { yearlyWalk } from './calculations/repair/yearly-walk.ts'
import { clearance } from './calculations/site/clearance.ts'
import { digNotice } from './calculations/site/dig-notice.ts'
import { heightBothSides } from './calculations/site/height-both-sides.ts'
import { holeToMark } from './calculations/site/hole-to-mark.ts'
import { oldFenceOut } from './calculations/site/old-fence-out.ts'
import { poolBarrier } from './calculations/site/pool-barrier.ts'
import { postLine } from './calculations/site/post-line.ts'
import { fenceRoundYard } from './calculations/site/fence-round-yard.ts'
import { rectangleDiagonals } from './calculations/site/rectangle-diagonals.ts'
import { sightTriangle } from './calculations/site/sight-triangle.ts'
import { fallOfSlope } from './calculations/site/fall-of-slope.ts'
import { slopeFromAngle } from './calculations/site/slope-from-angle.ts'
import { slopeFromLevels } from './calculations/site/slope-from-levels.ts'
import { slopeOfGround } from './calculations/site/slope-of-ground.ts'
import { squareCorner } from './calculations/site/square-corner.ts'
import { tenths } from './calculations/site/tenths.ts'
import { yardClosure } from './calculations/site/yard-closure.ts'
import { embedmentCheck } from './calculations/strength/embedment-check.ts'
import { postStrength } from './calculations/strength/post-strength.ts'
import { railStrength } from './calculations/strength/rail-strength.ts'
import { windFromPressure } from './calculations/strength/wind-from-pressure.ts'
import { windOpenFence } from './calculations/strength/wind-open-fence.ts'
import { windSolidFence } from './calculations/strength/wind-solid-fence.ts'
import { daysByTheWeek } from './calculations/time/days-by-the-week.ts'
import { daysOfTasks } from './calculations/time/days-of-tasks.ts'
import { jobCalendar } from './calculations/time/job-calendar.ts'
import { jobHours } from './calculations/time/job-hours.ts'
import { seasonCheck } from './calculations/time/season-check.ts'
import { workingDaysBetween } from './calculations/time/working-days-between.ts'
import { daysLater } from './calculations/time/days-later.ts'
import { workingDaysBefore } from './calculations/time/working-days-before.ts'
import { daysAtThatPace } from './calculations/time/days-at-pace.ts'
import { workingDaysLater } from './calculations/time/working-days-later.ts'
import { archOverUnequalBays } from './calculations/tops/arch-over-unequal-bays.ts'
import { archedTop } from './calculations/tops/arched-top.ts'
import { clippedCorners } from './calculations/tops/clipped-corners.ts'
import { pointedTop } from './calculations/tops/pointed-top.ts'
import { roundedTop } from './calculations/tops/rounded-top.ts'
import { archAtPlace } from './calculations/tops/arch-at-place.ts'
import { brickMortar } from './calculations/border/brick-mortar.ts'
import { postBetweenSteps } from './calculations/layout/post-between-steps.ts'
import { gateAmidRun } from './calculations/layout/gate-amid-run.ts'
import { postsBetweenOld } from './calculations/layout/posts-between.ts'
import { leftoverAtEnds } from './calculations/layout/leftover-at-ends.ts'
import { lineFromHouseOf } from './calculations/site/line-from-house.ts'
import { bayOnSlopeOf } from './calculations/layout/bay-on-slope.ts'
import { lineBetweenLots } from './calculations/site/line-between-lots.ts'
import { picketsEndToEnd } from './calculations/pickets/pickets-end-to-end.ts'
import { postAsSold } from './calculations/buying/post-as-sold.ts'
import { postBesidePickets } from './calculations/ground/post-beside-pickets.ts'
import { airForMoisture } from './calculations/wood/air-for-moisture.ts'
import { boardFeetOf } from './calculations/wood/board-feet.ts'
import { boardMovement } from './calculations/wood/board-movement.ts'
import { dressedSize } from './calculations/wood/dressed-size.ts'
import { dryingByRate } from './calculations/wood/drying-by-rate.ts'
import { dryingForecast } from './calculations/wood/drying-forecast.ts'
import { equilibrium } from './calculations/wood/equilibrium-moisture.ts'
import { fastenerMetalOf } from './calculations/wood/fastener-metal.ts'
import { meterCorrection } from './calculations/wood/meter-correction.ts'
import { moistureBasis } from './calculations/wood/moisture-basis.ts'
import { ovenDryMoisture } from './calculations/wood/oven-dry-moisture.ts'
import { shrinkByShare } from './calculations/wood/shrink-by-share.ts'
import { weightAtMoisture } from './calculations/wood/weight-at-moisture.ts'
import { readyToFinish } from './calculations/wood/ready-to-finish.ts'
import { sticksOfSizes } from './calculations/wood/sticks-of-sizes.ts'
import { stickWeightOf } from './calculations/wood/stick-weight.ts'
import { useClassOf } from './calculations/wood/use-class.ts'
import { gateSums } from './gates-catalogue.ts'
import { moneySums } from './money-catalogue.ts'
import { plainSums } from './plain-catalogue.ts'
import { fenceWords } from './words/fence.ts'
import { soFarWords } from './words/so-far.ts'
import { sections } from './words/timber-sold.ts'
import { wordsOf } from './words/vocabulary.ts'
import type { Word } from './words/word.ts'

/** The calculations by subject, in the order a job meets them. A subject is named as it would be said aloud: “I can work out …”. */
export const subjects: readonly { readonly subject: string; readonly calculations: readonly Calculation[] }[] = [
  {
    subject: 'lot lines, digging notice and rules',
    calculations: [
      digNotice,
      holeToMark,
      oldFenceOut,
      clearance,
      postLine,
      lineBetweenLots,
      lineFromHouseOf,
      lineLeft,
      heightBothSides,
      sightTriangle,
      poolBarrier,
    ],
  },
  {
    subject: 'corners, yards and slopes',
    calculations: [
      squareCorner,
      rectangleDiagonals,
      yardClosure,
      fenceRoundYard,
      tenths,
      slopeOfGround,
      slopeFromLevels,
      slopeFromAngle,
      fallOfSlope,
    ],
  },
  {
    subject: 'bays and posts, on the level and on a slope',
    calculations: [
      baysInRun,
      gateAmidRun,
      postsGiven,
      postsBetweenOld,
      runsApart,
      baysRoundCorners,
      runsFromPoints,
      runInPieces,
      runSetOut,
      openingOfBay,
      stepOfRun,
      postsOfFence,
      bayPatterns,
      leftoverAtEnds,
      bayOnSlopeOf,
      movedPost,
      cornerPost,
      curveByChords,
      steppedRun,
      rakedRun,
      postBetweenSteps,
      postHeights,
    ],
  },
  {
    subject: 'holes, stone and concrete',
    calculations: [
      postDepth,
      postSplit,
      postDepthCheck,
      postAsBought,
      postInParts,
      postBesidePickets,
      postAsSold,
      holeToFrost,
      postAboveOf,
      gravelForHoles,
      concreteForPosts,
      holesFilled,
      belledHole,
      crownedTop,
      bagYieldByWeight,
      bagsForVolume,
      bagsByHole,
      looseInBags,
      siteMix,
      mixWater,
      concreteWait,
      holeWidthByRule,
      spoilOfHoles,
      diggingHours,
      diggingByRate,
      haulTrips,
      mixedLoad,
      loadOverhang,
      liftingCheck,
    ],
  },
  {
    subject: 'rails and screws',
    calculations: [
      railsBetweenPosts,
      railsOfFence,
      railsAcrossFaces,
      railHeights,
      railSag,
      railBrackets,
      leaningWallCut,
      screwLength,
      picketScrews,
    ],
  },
  {
    subject: 'pickets and boards',
    calculations: [
      picketSpacing,
      gapForPickets,
      picketsTouchingPosts,
      asManyGaps,
      picketsPastPosts,
      buttedBoards,
      lappedBoards,
      boardOnBoard,
      baysAlike,
      storyStick,
      stickErrors,
      gapNow,
      gapLater,
      seeThrough,
      picketCount,
      picketLengthOf,
      picketsFromBoards,
      picketsByLength,
      picketsAMetre,
      picketsEndToEnd,
      picketsOfFence,
    ],
  },
  {
    subject: 'arched, pointed and rounded tops',
    calculations: [archedTop, archAtPlace, archOverUnequalBays, pointedTop, roundedTop, clippedCorners],
  },
  {
    subject: 'gates',
    calculations: gateSums,
  },
  { subject: 'post caps', calculations: [capForPost, capBlanks, pyramidCap, builtUpCap, chamfers, slopedPostTop] },
  { subject: 'the mowing edge', calculations: [brickEdge, brickMortar, castEdge, stoneStrip, edgeFabric, stripBed] },
  {
    subject: 'wood: sizes, treatment, moisture',
    calculations: [
      dressedSize,
      boardFeetOf,
      stickWeightOf,
      sticksOfSizes,
      useClassOf,
      fastenerMetalOf,
      equilibrium,
      airForMoisture,
      meterCorrection,
      ovenDryMoisture,
      weightAtMoisture,
      shrinkByShare,
      moistureBasis,
      boardMovement,
      dryingForecast,
      dryingByRate,
    ],
  },
  {
    subject: 'finish',
    calculations: [
      readyToFinish,
      finishAreaOf,
      finishQuantity,
      finishByFace,
      coatsByClock,
      dewPointOfAir,
      airForPaint,
      paintWindow,
      paintingHours,
      paintingByArea,
      recoatCalendar,
    ],
  },
  {
    subject: 'strength, as a check',
    calculations: [windOpenFence, windSolidFence, windFromPressure, embedmentCheck, postStrength, railStrength],
  },
  {
    subject: 'money',
    calculations: moneySums,
  },
  {
    subject: 'time',
    calculations: [
      workingDaysBetween,
      workingDaysLater,
      daysAtThatPace,
      workingDaysBefore,
      daysLater,
      jobHours,
      daysByTheWeek,
      daysOfTasks,
      jobCalendar,
      seasonCheck,
    ],
  },
  {
    subject: 'repair',
    calculations: [postLean, leanTrend, rotLeft, sagTriage, sisterOrReplace, resettingHours, yearlyWalk],
  },
  {
    subject: 'plain sums with units',
    calculations: plainSums,
  },
]

/** Every calculation, in the order a job meets them. */
export const catalogue: readonly Calculation[] = subjects.flatMap((it) => it.calculations)

/** Those that somebody may ask for: the others are worked for a whole fence, from what its parts give. */
export const askable: readonly Calculation[] = catalogue.filter((calc) => !calc.ofTheFence)

/** Every word that a calculation needs or gives, by name. */
export const vocabulary: ReadonlyMap<string, Word> = wordsOf(
  [...fenceWords, ...soFarWords, ...sections.flatMap((it) => [it.stock, it.prices])],
  catalogue,
)

/** The calculation of that name (`picket-spacing`); nothing where there is none. */
export const calculationNamed = (name: string): Calculation | undefined => byName.get(name)
const byName: ReadonlyMap<string, Calculation> = new Map(catalogue.map((calc) => [calc.name, calc]))
