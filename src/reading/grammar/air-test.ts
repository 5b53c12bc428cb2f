import { field, measuredAgain } from "../sense";

/** Terms under whose titles the air test and its parts stand. */
const AIR_TEST =
  "air amount content meter method result reading reported sample number corrected added";

/** What the volumetric test itself gives. */
export const AIR_TEST_GRAMMAR = {
  first: field(
    "reading first|initial, volumetric first|initial, meter reading first, ?meter first, ?roll first, ?neck first, >reading before repeat",
    `${AIR_TEST} neck roll after settle`,
    "percent divisions",
  ),
  second: field(
    "reading second|confirming|repeat|check, volumetric second|confirming, ?meter second, ?roll second, ?neck second, ?roll repeat|confirming, ?confirming~, ?check~, ?check test~",
    `${AIR_TEST} neck roll after check settle`,
    "percent divisions",
  ),
  third: field(
    "reading third, volumetric third, ?meter third, ?roll third, ?neck third",
    `${AIR_TEST} neck roll after settle more`,
    "percent divisions",
  ),
  final: field(
    "reading, reading final|end, reading settle, volumetric final reading",
    `air meter neck content number settle volume share uncorrected`,
    "percent divisions",
  ),
  cups: field(
    "cup, ?calibration water",
    "more late added number amount water total calibration reading specified meter bowl",
    "percent",
  ),
  alcohol: field("alcohol", "added amount volume total initial number before zero meter", "liquid"),
  alcoholUnit: field("alcohol unit", "amount volume", ""),
  foam: field(
    "foam, !foam in-order",
    "size left neck reading amount high total volume first second third further roll beyond limit allowed",
    "divisions percent length",
  ),
  settle: field(
    "settle, settle time, !settle in-order, !settle allowed",
    "after before end left reading neck number total amount foam further roll first second third initial final",
    "duration clock",
  ),
  packed: field(
    "packed, >not dispersed, !dispersed, !dispersed concrete|sample|total, !dispersed in-order",
    "total left bowl meter inversion roll after amount sample",
    "yes-no",
  ),
  leak: field(
    "leak, >not tight, !tight, !leak in-order, !tight in-order",
    "left meter roll inversion water after",
    "yes-no",
  ),
  air: measuredAgain(
    `air, air content, air result|reported|corrected|final, volumetric reported|corrected|result,
      volumetric air final, ?meter corrected`,
    "volumetric total method meter content number result reported corrected final amount volume",
    "percent",
  ),
} as const;
