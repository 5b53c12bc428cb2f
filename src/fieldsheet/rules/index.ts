import type { Rule } from "../rule";
import { agreementNotRecorded } from "./agreement-not-recorded";
import { airBelowZero } from "./air-below-zero";
import { alcoholBeyondTable } from "./alcohol-beyond-table";
import { alcoholMissing } from "./alcohol-missing";
import { alcoholNotInSheet } from "./alcohol-not-in-sheet";
import { alcoholUnitMissing } from "./alcohol-unit-missing";
import { beyondScale } from "./beyond-scale";
import { cannotBeRead } from "./cannot-be-read";
import { cupsNotWhole } from "./cups-not-whole";
import { foamOverLimit } from "./foam-over-limit";
import { limitsCrossed } from "./limits-crossed";
import { negativeValue } from "./negative-value";
import { notANumber } from "./not-a-number";
import { offGridReading } from "./off-grid-reading";
import { outsideSpecification } from "./outside-specification";
import { packedConcreteLeft } from "./packed-concrete-left";
import { readingMissing } from "./reading-missing";
import { readingsDisagree } from "./readings-disagree";
import { reportedAirWrong } from "./reported-air-wrong";
import { secondReadingMissing } from "./second-reading-missing";
import { slowToSettle } from "./slow-to-settle";
import { thirdReadingMissing } from "./third-reading-missing";

/** Every rule, in the order in which findings of one row are listed. */
export const RULES: readonly Rule[] = [
  foamOverLimit,
  slowToSettle,
  readingsDisagree,
  packedConcreteLeft,
  notANumber,
  cannotBeRead,
  negativeValue,
  beyondScale,
  offGridReading,
  cupsNotWhole,
  readingMissing,
  secondReadingMissing,
  thirdReadingMissing,
  alcoholMissing,
  alcoholUnitMissing,
  alcoholBeyondTable,
  airBelowZero,
  reportedAirWrong,
  limitsCrossed,
  outsideSpecification,
  alcoholNotInSheet,
  agreementNotRecorded,
];
