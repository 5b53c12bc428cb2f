/*
 * What each function makes of each kind of cell, in each argument: the same everywhere (our own rule).
 *
 * | cell                  | what comes out                                                          |
 * |-----------------------|-------------------------------------------------------------------------|
 * | blank                 | needed: a sentence that asks for it, or a blank where nothing at all is  |
 * |                       | measured; else what leaving it out gives                                 |
 * | 0                     | 0, never taken for a blank                                               |
 * | an error              | #VALUE!, the sentence names the argument and the error                   |
 * | text that cannot be   | #VALUE!, the sentence names the text                                     |
 * | TRUE for a number     | #VALUE!                                                                  |
 * | a formatted number, a date | as the plain number                                                 |
 * | an entity             | as the error that it stands for                                          |
 *
 * The rows give each function arguments that work; a new function needs one row more.
 */
import { shown } from "./custom-functions-runtime";
import * as agreement from "../../src/functions/agreement";
import * as chart from "../../src/functions/control-chart";
import * as density from "../../src/functions/density-and-yield";
import * as evaporation from "../../src/functions/evaporation";
import * as lightweight from "../../src/functions/lightweight-density";
import * as pressure from "../../src/functions/pressure-air";
import * as rounding from "../../src/functions/rounding";
import * as specification from "../../src/functions/specification";
import * as specifiedAir from "../../src/functions/specified-air";
import * as strength from "../../src/functions/strength";
import * as volumetric from "../../src/functions/volumetric-air";
import * as water from "../../src/functions/water-and-apparatus";
import record from "./functions-record.json";

type Given = number | string | readonly number[];
type Row = readonly [id: string, run: (...given: any[]) => unknown[][], ...given: Given[]];

const SERIES = [6, 6.25, 5.75, 6, 6.5, 6];
const ROWS: readonly Row[] = [
  ["AGREEMENT", agreement.agreementOfResults, 6, 6.25, "C231", "several"],
  ["AGREEMENT.LIMIT", agreement.agreementLimitOfResults, 6, 6.25, "C231", "several"],
  ["AIR", volumetric.air, 6, 1, 48, "oz", 0.25],
  ["AIR.FULLMIX", pressure.airFullMix, 6, 20, 25],
  ["AIR.GRAVIMETRIC", density.airGravimetric, 152, 144, "us"],
  ["AIR.MORTAR", pressure.airMortar, 6, 20, 14],
  ["AIR.PRESSURE", pressure.airPressure, 4, 0.3],
  ["ALCOHOL.CORRECTION", volumetric.alcoholCorrectionFor, 48, "oz"],
  ["BATCH.YIELD", density.batchYieldFor, 3900, 144.5, "ft3"],
  ["BOWL.VOLUME", water.bowlVolumeFor, 4.67, 70, "us"],
  ["CEMENT.CONTENT", density.cementContentFor, 5640, 7.1],
  ["CHART.CUSUM", chart.chartCusum, SERIES, 6, 0.25, 1],
  ["CHART.EWMA", chart.chartEwma, SERIES, 0.3, 6, 0.25],
  ["CHART.LIMITS", chart.chartLimits, SERIES],
  ["CHART.SIGNALS", chart.chartSignals, SERIES, [5, 6, 7]],
  ["CUP.PERCENT", water.cupPercent, 21.24, 2124],
  ["DENSITY", density.density, 54.1, 18.6, 0.25, "us"],
  ["DENSITY.EQUILIBRIUM", lightweight.densityEquilibrium, 110, "us"],
  ["DENSITY.OVENDRY", lightweight.densityOvenDry, 1350, 900, 611, 27, "us"],
  ["DENSITY.OVENDRY.MEASURED", lightweight.densityOvenDryMeasured, 10.9, 11.8, 5.85, "si"],
  ["DENSITY.THEORETICAL", density.densityTheoretical, 3900, 25.6, "us"],
  ["EVAPORATION", evaporation.evaporationRate, 87, 80, 50, 12, "us"],
  ["LEVEL.SETTLED", volumetric.levelSettled, [0, 1, 2, 3], [6, 6, 6, 6]],
  ["READING.FINAL", volumetric.readingFinal, 6, 6, 6],
  ["READING.NEXT", volumetric.readingNext, 6, 6, 6],
  ["RELATIVE.YIELD", density.relativeYieldFor, 27.2, 27],
  ["ROUND.STEP", rounding.roundStep, 6.1, 0.25],
  ["SPEC.ACCEPT", specification.acceptByCheckTest, 8, 4.5, 7.5, 7],
  ["SPEC.AIR", specifiedAir.specAir, "3/4", "F2", 4000, "ACI 318-19", "us"],
  ["SPEC.CHANCE", specification.chanceWithinSpecification, 7.25, 4.5, 7.5, 0.28, "C231"],
  ["SPEC.COMPARE", specification.compareWithSpecification, 7.25, 4.5, 7.5, 1],
  ["SPEC.GUARD", specification.guardedSpecification, 4.5, 7.5, 0.05, 0.28, "C231"],
  ["SPEC.LIMITS", specification.limitsFromTarget, 6, 1.5, 1],
  ["SPEC.MARGIN", specification.marginToSpecification, 7.25, 4.5, 7.5],
  ["STRENGTH.ACCEPT", strength.strengthAccept, [4500, 4200, 4100], 4000, "us"],
  ["STRENGTH.REQUIRED", strength.strengthRequired, 4000, 420, 30, "us"],
  ["STRENGTH.WITHIN", strength.strengthWithin, [4500, 4200]],
  ["WATER.DENSITY", water.waterDensityAt, 70, "us"],
];

/** Arguments that must stand in the call but whose blank means "none", by the function's own help. */
const BLANK_IS_NONE = ["low", "high", "unit", "series"];

const declared = new Map(record.map(({ id, parameters }) => [id, parameters]));
const column = (given: Given) =>
  (typeof given === "object" ? given : [given]).map((value) => [value]);
/** What the function shows when the first cell of one argument is replaced. */
function withCell([, run, ...given]: Row, position: number, cell: unknown): unknown {
  const columns = given.map(column) as unknown[][][];
  if (position >= 0) columns[position]![0] = [cell];
  const across = run === strength.strengthWithin; // a pair of companions stands side by side
  return shown(() => run(...(across ? columns.map((values) => [values.flat()]) : columns)));
}
const said = (cell: unknown) => (typeof cell === "string" ? cell : JSON.stringify(cell));

const ARGUMENTS = ROWS.flatMap((row) =>
  row.slice(2).map((given, i) => ({
    id: row[0],
    name: declared.get(row[0])![i]!.split(/[?:]/)[0]!,
    needed: !declared.get(row[0])![i]!.includes("?"),
    row,
    position: i,
    given: given as Given,
  })),
);
const NUMBERS = ARGUMENTS.filter(({ given }) => typeof given !== "string");

test("every function with single arguments or a series has its row", () => {
  const tables = ["CHECK", "FINDINGS"]; // they read whole tables, and say in a finding what they cannot read
  expect(ROWS.map(([id]) => id).sort()).toEqual(
    record.map(({ id }) => id).filter((id) => !tables.includes(id)),
  );
});

test.each(ROWS.map((row) => ({ id: row[0], row })))(
  "FRESH.$id works with the arguments of its row",
  ({ row }) => {
    expect(said(withCell(row, -1, null))).not.toMatch(/#VALUE!|#N\/A|"#/);
  },
);

describe.each(ARGUMENTS)("FRESH.$id, $name", ({ row, position, needed, given, name }) => {
  test("an error is passed on by name", () => {
    const cell = said(withCell(row, position, { code: "#REF!" }));
    if (typeof given === "object" && !cell.startsWith("#")) expect(cell).toContain("#VALUE!");
    else expect(cell).toMatch(/^#VALUE! .*#REF!/);
  });

  test("an entity is the error that it stands for", () => {
    const entity = { type: "Entity", text: "a load", basicType: "Error", basicValue: "#BUSY!" };
    expect(said(withCell(row, position, entity))).toContain(
      typeof given === "object" ? "#" : "#BUSY!",
    );
  });

  test("text that cannot be is shown in the sentence", () => {
    const cell = said(withCell(row, position, "abc"));
    if (typeof given === "object" && !cell.startsWith("#")) expect(cell).toContain("#VALUE!");
    else expect(cell).toMatch(/^#VALUE! .*abc/);
  });

  test("a blank is asked for, or stands for nothing given", () => {
    if (typeof given === "object")
      return expect(said(withCell(row, position, null))).not.toContain("abc");
    const cell = said(withCell(row, position, null));
    const asks = needed && !BLANK_IS_NONE.includes(name);
    if (asks)
      expect(cell).toMatch(
        /^#VALUE! .*nothing is given|^#N\/A A second reading|^$|^\[\["",""\]\]$/,
      );
    else expect(cell).not.toMatch(/nothing is given/);
  });
});

describe.each(NUMBERS)("FRESH.$id, $name", ({ row, position, given }) => {
  const plain = typeof given === "object" ? given[0]! : given;

  test("0 is never taken for a blank", () => {
    expect(said(withCell(row, position, 0))).not.toMatch(/nothing is given|^$/);
  });

  test("TRUE is not a number", () => {
    expect(said(withCell(row, position, true))).toContain("#VALUE!");
  });

  test("a formatted number is its plain number", () => {
    const formatted = { type: "FormattedNumber", basicValue: plain, numberFormat: "0.00" };
    expect(withCell(row, position, formatted)).toEqual(withCell(row, -1, null));
  });
});
