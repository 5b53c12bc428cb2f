import type { Rule } from "../rule";
import { agreementNotRecorded } from "./agreement-not-recorded";
import { airBelowZero } from "./air-below-zero";
import { airBeyondMost } from "./air-beyond-most";
import { alcoholAddedLate } from "./alcohol-added-late";
import { alcoholBeyondTable } from "./alcohol-beyond-table";
import { alcoholMissing } from "./alcohol-missing";
import { alcoholNotInSheet } from "./alcohol-not-in-sheet";
import { alcoholOverCapacity } from "./alcohol-over-capacity";
import { alcoholUnitMissing } from "./alcohol-unit-missing";
import { beyondScale } from "./beyond-scale";
import { bowlTooSmall } from "./bowl-too-small";
import { calledVoid } from "./called-void";
import { cannotBeRead } from "./cannot-be-read";
import { checkTestDue } from "./check-test-due";
import { checkTestFailed } from "./check-test-failed";
import { concreteTemperature } from "./concrete-temperature";
import { cupOutOfTolerance } from "./cup-out-of-tolerance";
import { cupsNotNeeded } from "./cups-not-needed";
import { cupsNotWhole } from "./cups-not-whole";
import { decidedAllTheSame } from "./decided-all-the-same";
import { densityAndAir } from "./density-and-air";
import { densityOutsideSpecification } from "./density-outside-specification";
import { dischargedLate } from "./discharged-late";
import { duplicateTest } from "./duplicate-test";
import { evaporationHigh } from "./evaporation-high";
import { finalReadingWrong } from "./final-reading-wrong";
import { foamOverLimit } from "./foam-over-limit";
import { cylindersApart } from "./cylinders-apart";
import { cylindersApartOnAverage } from "./cylinders-apart-on-average";
import { initialCuringTemperature } from "./initial-curing";
import { interpolatedCorrection } from "./interpolated-correction";
import { leak } from "./leak";
import { limitsInSomeRows } from "./limits-in-some-rows";
import { limitsCrossed } from "./limits-crossed";
import { littleWater } from "./little-water";
import { longInversion } from "./long-inversion";
import { mayBeCalledVoid } from "./may-be-called-void";
import { measureTooSmall } from "./measure-too-small";
import { meterCheckOverdue } from "./meter-check-overdue";
import { meterFoundOut } from "./meter-found-out";
import { methodsDisagree } from "./methods-disagree";
import { mouldedLate } from "./moulded-late";
import { nearLimit } from "./near-limit";
import { negativeValue } from "./negative-value";
import { notANumber } from "./not-a-number";
import { offGridReading } from "./off-grid-reading";
import { otherAlcoholStrength } from "./other-alcohol-strength";
import { otherMethod } from "./other-method";
import { outsideSpecification } from "./outside-specification";
import { packedConcreteLeft } from "./packed-concrete-left";
import { placesOfSampling } from "./places-of-sampling";
import { pressureCheckDue } from "./pressure-check-due";
import { pressureCheckMayBeDue } from "./pressure-check-may-be-due";
import { readingAsShare } from "./reading-as-share";
import { readingMissing } from "./reading-missing";
import { readingsDisagree } from "./readings-disagree";
import { readingsNotInSheet } from "./readings-not-in-sheet";
import { repeatWithoutMoreAlcohol } from "./repeat-without-more-alcohol";
import { reportedAirWrong } from "./reported-air-wrong";
import { reportedOutside } from "./reported-outside";
import { sampledFromAnEnd } from "./sampled-from-an-end";
import { secondReadingMissing } from "./second-reading-missing";
import { shortInversion } from "./short-inversion";
import { shortRoll } from "./short-roll";
import { slipInColumn } from "./slip-in-column";
import { slowToSettle } from "./slow-to-settle";
import { slumpOutsideTolerance } from "./slump-outside-tolerance";
import { staleSample } from "./stale-sample";
import { thirdReadingMissing } from "./third-reading-missing";
import { timesOutOfOrder } from "./times-out-of-order";
import { voidTestReported } from "./void-test-reported";
import { voidWithoutRepeat } from "./void-without-repeat";
import { tooFewCylinders } from "./too-few-cylinders";
import { unitDoesNotFit } from "./unit-does-not-fit";
import { waterAddedWrongly } from "./water-added-wrongly";
import { waterCementOverLimit } from "./water-cement-over-limit";
import { wetSievingDue } from "./wet-sieving-due";
import { wrongMethodForAggregate } from "./wrong-method-for-aggregate";

/** Every rule, in the order in which findings of one row are listed; rules across rows come last. */
export const RULES: readonly Rule[] = [
  wrongMethodForAggregate,
  calledVoid,
  leak,
  alcoholAddedLate,
  foamOverLimit,
  slowToSettle,
  readingsDisagree,
  packedConcreteLeft,
  mayBeCalledVoid,
  notANumber,
  cannotBeRead,
  negativeValue,
  beyondScale,
  readingAsShare,
  offGridReading,
  cupsNotWhole,
  readingMissing,
  secondReadingMissing,
  thirdReadingMissing,
  alcoholMissing,
  alcoholUnitMissing,
  alcoholBeyondTable,
  airBelowZero,
  airBeyondMost,
  timesOutOfOrder,
  finalReadingWrong,
  reportedAirWrong,
  voidTestReported,
  limitsCrossed,
  limitsInSomeRows,
  cupsNotNeeded,
  alcoholOverCapacity,
  otherAlcoholStrength,
  littleWater,
  shortInversion,
  longInversion,
  shortRoll,
  wetSievingDue,
  staleSample,
  mouldedLate,
  sampledFromAnEnd,
  initialCuringTemperature,
  tooFewCylinders,
  cylindersApart,
  cylindersApartOnAverage,
  waterAddedWrongly,
  waterCementOverLimit,
  outsideSpecification,
  reportedOutside,
  densityOutsideSpecification,
  slumpOutsideTolerance,
  unitDoesNotFit,
  concreteTemperature,
  measureTooSmall,
  pressureCheckDue,
  methodsDisagree,
  densityAndAir,
  decidedAllTheSame,
  nearLimit,
  pressureCheckMayBeDue,
  interpolatedCorrection,
  evaporationHigh,
  dischargedLate,
  otherMethod,
  slipInColumn,
  placesOfSampling,
  voidWithoutRepeat,
  repeatWithoutMoreAlcohol,
  checkTestDue,
  checkTestFailed,
  duplicateTest,
  meterCheckOverdue,
  meterFoundOut,
  bowlTooSmall,
  cupOutOfTolerance,
  readingsNotInSheet,
  alcoholNotInSheet,
  agreementNotRecorded,
];
