import { alcoholFromCell } from "../measure/alcohol";
import { isBlank, type CellValue } from "../measure/cell-value";
import { at, isIssue, issue, unavailable, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { alcoholCorrection } from "../methods/volumetric-air/alcohol-correction";
import { correctedAir } from "../methods/volumetric-air/corrected-air";
import { judgeReadings, type ReadingVerdict } from "../methods/volumetric-air/final-reading";
import { settledMinute, type LevelAtMinute } from "../methods/volumetric-air/settled-level";
import { notAMeterReading } from "../methods/volumetric-air/meter-reading";
import { cell, number, optional, setting, text } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { orThrow, shownInCell, withoutLoneError } from "./runner/cell-error";
import { pairedSeries } from "./runner/paired-series";
import { cups } from "./runner/cups-argument";

/**
 * Corrected air content of fresh concrete, in %: final meter reading less the correction for alcohol plus calibrated cups, rounded to the step with half going to the even step. Volumetric method, ASTM C173 / AASHTO T 196.
 * @customfunction AIR AIR
 * @param reading Final meter reading in %, 0 to 9, read to the quarter percent.
 * @param [cups] Calibrated cups of water added to bring the level on the scale, a whole number. Each counts 1.00 %.
 * @param [alcohol] Isopropyl alcohol added: a number with the unit argument, or a text with its unit such as "48 oz". Left out: no correction; 0: none was added.
 * @param [unit] Unit of a number given as alcohol: "pt", "oz", "L" or "mL".
 * @param [step] Step of the reported result in %: 0.25 unless given; 0 for no rounding.
 * @returns Air content in %.
 * @example =FRESH.AIR(6, 0, "48 oz") gives 5.75 [6.00 − 0.30 = 5.70]
 * @example =FRESH.AIR(7.75, 1, 64, "oz", 0) gives 8.15 [7.75 − 0.60 + 1.00, not rounded]
 */
export function air(
  reading: any[][],
  cups?: any[][],
  alcohol?: any[][],
  unit?: any[][],
  step?: any[][],
): any[][] {
  return airOf(reading, cups, alcohol, unit, step);
}
const airOf = cellByCell(
  [
    number("reading"),
    optional(cups),
    { ...optional(cell("alcohol")), neededInRange: true },
    setting(text("unit")),
    setting(number("step")),
  ],
  (reading, cups, alcohol, unit, step) => {
    // Whoever names a unit means to give an amount.
    const missing = alcohol === undefined && unit !== undefined;
    const amount = missing ? issue("blank-among-others") : alcoholFromCell(alcohol ?? null, unit);
    if (isIssue(amount)) return at("alcohol", amount);
    const result = correctedAir({ reading, cups, alcohol: amount }, step);
    return isIssue(result) ? result : result.air;
  },
);

/**
 * Correction for the effect of the alcohol on the meter reading, in % of air to subtract. Between the rows of the table it is interpolated in a straight line, in the column of the unit given.
 * @customfunction ALCOHOL.CORRECTION ALCOHOL.CORRECTION
 * @param alcohol Isopropyl alcohol added: a number with the unit argument, or a text with its unit such as "1.4 L".
 * @param [unit] Unit of a number given as alcohol: "pt", "oz", "L" or "mL".
 * @returns % of air to subtract.
 * @example =FRESH.ALCOHOL.CORRECTION("48 oz") gives 0.30 [ASTM C173 Table 1, in a meter maker's manual (2019)]
 * @example =FRESH.ALCOHOL.CORRECTION(56, "oz") gives 0.45 [half-way from 0.30 at 48 oz to 0.60 at 64 oz]
 */
export function alcoholCorrectionFor(alcohol: any[][], unit?: any[][]): any[][] {
  return correctionOf(alcohol, unit);
}
const correctionOf = cellByCell([cell("alcohol"), setting(text("unit"))], (alcohol, unit) => {
  const amount = alcoholFromCell(alcohol, unit)!;
  const correction = isIssue(amount) ? amount : alcoholCorrection(amount);
  return isIssue(correction) ? at("alcohol", correction) : correction.subtract;
});

/**
 * Final meter reading of a volumetric air test from the readings taken. #N/A with the reason when a further reading is needed or the test is void.
 * @customfunction READING.FINAL READING.FINAL
 * @param first First meter reading in %.
 * @param second Second reading in %, after rolling again.
 * @param [third] Third reading in %, where the second differs from the first by more than 0.25 %.
 * @returns Final meter reading in %.
 * @example =FRESH.READING.FINAL(5.5, 5.75) gives 5.75 [they differ by no more than 0.25]
 * @example =FRESH.READING.FINAL(5.5, 6.25) gives #N/A [a third reading is needed]
 * @example =FRESH.READING.FINAL(5.5, 6.25, 6.25) gives 6.25 [the third agrees with the second]
 */
export function readingFinal(first: any[][], second: any[][], third?: any[][]): any[][] {
  return finalOf(first, second, third);
}
const readings = [number("first"), optional(number("second")), optional(number("third"))] as const;
const finalOf = cellByCell(readings, (first, second, third) => {
  const verdict = judge(first, second, third);
  if (isIssue(verdict)) return verdict;
  switch (verdict.next) {
    case "final":
      return verdict.reading;
    case "second reading":
      return unavailable("second-reading-needed");
    case "third reading":
      return unavailable("third-reading-needed", { first, second: second! });
    case "void":
      return unavailable("readings-void", { second: second!, third: third! });
  }
});

/**
 * What comes next in a volumetric air test after the readings taken so far: "second reading", "third reading", "final" or "void".
 * @customfunction READING.NEXT READING.NEXT
 * @param first First meter reading in %.
 * @param [second] Second reading in %, after rolling again.
 * @param [third] Third reading in %, where the second differs from the first by more than 0.25 %.
 * @returns What comes next, as a text.
 * @example =FRESH.READING.NEXT(5.5, 6.25) gives "third reading" [they differ by 0.75]
 * @example =FRESH.READING.NEXT(5, 5.5, 6) gives "void" [the third differs from the second by 0.50]
 */
export function readingNext(first: any[][], second?: any[][], third?: any[][]): any[][] {
  return nextOf(first, second, third);
}
const nextOf = cellByCell(readings, (first, second, third) => {
  const verdict = judge(first, second, third);
  return isIssue(verdict) ? verdict : verdict.next;
});

function judge(first: number, second?: number, third?: number): ReadingVerdict | Issue {
  for (const [place, reading] of Object.entries({ first, second, third })) {
    const wrong = reading === undefined ? undefined : at(place, notAMeterReading(reading));
    if (wrong) return wrong;
  }
  return judgeReadings(first, second, third);
}

/**
 * First recorded minute at which the level on the neck counts as settled: some level was recorded at least 2 minutes before, and every level since then lies within 0.25 % of it. #N/A with the reason when it has not, by minute 6 or by the end.
 * @customfunction LEVEL.STABLE LEVEL.STABLE
 * @param minutes Minutes since rolling ended: a column, or a row above a table with one test a row.
 * @param levels Levels in %, over the same minutes.
 * @returns Minute at which the level has settled.
 * @example =FRESH.LEVEL.STABLE({1;2;3;4;5}, {7;6;5.5;5.5;5.25}) gives 5 [from minute 3 on within 0.25]
 */
export function levelStable(minutes: any[][], levels: any[][]): any[][] {
  const { pairs, down } = orThrow(pairedSeries(minutes, levels, ["minutes", "levels"]));
  const settled = pairs.map((series) => [shownInCell(settledIn(series))]);
  return withoutLoneError(down ? [settled.flat()] : settled);
}

function settledIn(series: readonly (readonly [CellValue, CellValue])[]): number | "" | Issue {
  const seen = series.filter(([, level]) => !isBlank(level)).map(levelAtMinute);
  if (seen.length === 0) return "";
  return seen.find(isIssue) ?? settledMinute(seen as LevelAtMinute[]);
}

function levelAtMinute([minutes, levels]: readonly [CellValue, CellValue]): LevelAtMinute | Issue {
  const minute = at("minutes", numberFromCell(minutes) ?? issue("argument-missing"));
  if (isIssue(minute)) return minute;
  const level = at("levels", numberFromCell(levels) ?? issue("argument-missing"));
  return isIssue(level) ? level : { minute, level };
}
