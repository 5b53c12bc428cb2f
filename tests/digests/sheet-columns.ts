import type { CellValue } from "../../src/measure/cell-value";
import { finalOf } from "../simulation/plain-method";
import { amountOf, type PlainTest } from "../simulation/plain-test";
import type { Random } from "../simulation/random";

/** What the cells of one row are drawn from. */
export interface RowToDraw {
  readonly random: Random;
  readonly test: PlainTest;
  /** Position of the row in its sheet, from 0. */
  readonly row: number;
}

/** One column that a sheet may have. The headers are kept here, whatever the vocabulary becomes. */
export interface SheetColumn {
  readonly headers: readonly string[];
  /** A cell as a careful lab would fill it in. */
  readonly plausible: (drawn: RowToDraw) => CellValue;
  /** Cells of this kind of column that are odd in their own way. */
  readonly odd?: readonly CellValue[];
}

const column = (
  headers: readonly string[],
  plausible: SheetColumn["plausible"],
  odd?: readonly CellValue[],
): SheetColumn => ({ headers, plausible, odd });

const percent = (thousandths: number | undefined) =>
  thousandths === undefined ? null : thousandths / 1000;
const between =
  (from: number, to: number, step: number) =>
  ({ random }: RowToDraw) =>
    Number((from + step * random.whole(0, Math.round((to - from) / step))).toFixed(6));
const oneOf =
  (...cells: CellValue[]) =>
  ({ random }: RowToDraw) =>
    random.one(cells);
const clock =
  (minute: number, spread: number) =>
  ({ random, row }: RowToDraw): CellValue => {
    const at = (minute + 15 * row + random.whole(0, spread)) % 1440;
    const written = `${Math.floor(at / 60)}:${String(at % 60).padStart(2, "0")}`;
    return random.chance(0.5) ? at / 1440 : written;
  };

const ODD_READING = [6.1, 9.25, 12, -0.25, 0.055, "about 6", "6,25", "6 1/4", "6¼", "6.25 %", true];
const ODD_TIME = ["2:05 pm", "25:00", "noon", 1.5, 46182.5, 366, -0.1];
const ODD_DATE = ["2026-06-09", "9 Jun 2026", "31.5.2026", "5/6/2026", "2026-02-30", "June", 0.5];
const ODD_DURATION = ["90 s", "1.5 min", "1:30", "long", -1, "2,5 min"];
const ODD_MEASURED = ["72 °F", "19 mm", "4 1/2 in", "a bit", -5, "1,5", "300 furlongs"];
const ODD_YES_NO = ["x", "yes", "Y", "a bit", 1, 0, true, false, "nil", "✓"];

/** The columns that are recognised, by field. */
export const COLUMNS = {
  sample: column(["Sample", "Test no.", "Lab ID"], ({ random, row }) =>
    random.chance(0.85) ? `S-${row + 1}` : random.one([`S-${row}C`, `S-${row} repeat`, `S-${row}`]),
  ),
  load: column(
    ["Load", "Ticket", "Truck no."],
    ({ random, row }) => `L${row - (random.chance(0.2) ? 1 : 0)}`,
  ),
  date: column(["Date", "Test date"], ({ row }) => 46_000 + Math.floor(row / 3), ODD_DATE),
  time: column(["Time", "Time of day"], clock(480, 5), ODD_TIME),
  mix: column(["Mix", "Class of concrete"], oneOf("A-4000", "B lightweight", "a-4000")),
  method: column(
    ["Test method", "Method"],
    oneOf("C173", "volumetric", "ASTM C173", "C231", "pressure", "T 121", "by hand"),
  ),
  repeatOf: column(["Repeat of"], ({ random, row }) => (random.chance(0.2) ? `S-${row}` : null)),
  checkOf: column(["Check test of"], ({ random, row }) => (random.chance(0.2) ? `S-${row}` : null)),
  first: column(
    ["First reading", "Initial reading (%)", "R1"],
    ({ test }) => percent(test.readings[0]),
    ODD_READING,
  ),
  second: column(
    ["Second reading", "2nd reading", "R2 (%)"],
    ({ test }) => percent(test.readings[1]),
    ODD_READING,
  ),
  third: column(
    ["Third reading", "Reading 3"],
    ({ test }) => percent(test.readings[2]),
    ODD_READING,
  ),
  final: column(
    ["Final reading", "Final meter reading (%)", "Meter reading"],
    ({ test, random }) => percent(finalOf(test.readings))! + (random.chance(0.1) ? 0.25 : 0),
    ODD_READING,
  ),
  cups: column(["Cups", "Calibrated cups", "No. of cups"], ({ test }) => test.cups || null, [
    0.5,
    -1,
    "two",
    "1",
    12,
    40,
    "1 cup",
  ]),
  alcohol: column(
    ["Alcohol (oz)", "Alcohol", "Isopropyl alcohol (pt)", "Alcohol (mL)", "IPA oz"],
    ({ test, random }) =>
      random.chance(0.4) ? `${amountOf(test.unit, test.marks)} ${test.unit}` : test.amount,
    ["48 oz", "1.4 L", "500 mL", "2 1/2 pt", "1 gal", "some", 0, 96, -8, "0", "1,4 L", "48 oz."],
  ),
  alcoholUnit: column(["Alcohol unit"], ({ test }) => test.unit, ["gal", "ounces", "cc", 7]),
  foam: column(["Foam", "Foam divisions"], between(0, 2, 0.25), [2.25, 3, -1, "much", "1 1/2"]),
  settle: column(["Time to settle", "Settling time (min)"], between(1, 6, 0.5), ODD_DURATION),
  packed: column(["Packed concrete left", "Undisturbed concrete"], oneOf("no", null), ODD_YES_NO),
  leak: column(["Leak", "Leakage"], oneOf("none", "no", null), ODD_YES_NO),
  air: column(
    ["Reported air", "Air content (%)", "Air"],
    ({ test, random }) =>
      percent(test.reported)! + (random.chance(0.2) ? random.whole(-3, 3) / 4 : 0),
    ["VOID", "void", "6,25", "n/a", 5.8, "5 3/4 %", -1, 0.0575],
  ),
  low: column(["Low", "Air min", "Lower limit"], oneOf(4.5, 5), ["4,5", "none", 8]),
  high: column(["High", "Air max", "Upper limit"], oneOf(7.5, 8), ["7,5", "open", 3]),
  target: column(["Target air", "Specified air"], oneOf(6, 6.5), ["6 %", "six"]),
  tolerance: column(["Tolerance", "Tol ±"], oneOf(1.5, 1), ["±1.5", "+/- 1.5 %", "some", -1]),
  water: column(["Water before alcohol (pt)", "Initial water"], between(0.5, 2, 0.25), [
    "16 oz",
    "500 mL",
    1,
    "little",
  ]),
  alcoholStrength: column(["Alcohol strength"], oneOf(70, 91), ["70 %", 0.7, "strong", -70]),
  lateAlcohol: column(["Alcohol after zeroing", "Late alcohol (oz)"], oneOf("no", null, 0), [
    8,
    "8 oz",
    "yes",
    "some",
    "1,5",
  ]),
  inversion: column(["Inversion time (s)", "Total inversion"], between(40, 90, 5), ODD_DURATION),
  longestInversion: column(["Longest inversion"], between(2, 7, 1), ODD_DURATION),
  roll: column(["Rolling time", "Roll time (min)"], between(45, 75, 5), ODD_DURATION),
  meter: column(["Meter", "Air meter no."], oneOf("M-1", "M-2", "m-1")),
  meterCheck: column(["Meter checked", "Calibration date"], between(45_500, 46_000, 20), ODD_DATE),
  bowlVolume: column(["Bowl volume", "Bowl volume (ft³)"], oneOf(0.075, 0.08), [
    2.2,
    "0.07 ft³",
    ...ODD_MEASURED,
  ]),
  cupVolume: column(["Cup volume", "Cup volume (mL)"], oneOf(21.24, 22.6), [
    "1.3 in³",
    0.00075,
    ...ODD_MEASURED,
  ]),
  start: column(["Test start", "Time tested"], clock(500, 12), ODD_TIME),
  sampledFrom: column(["Sampled from", "First portion at"], clock(480, 4), ODD_TIME),
  sampledTo: column(["Sampled to", "Time sampled"], clock(490, 12), ODD_TIME),
  batched: column(["Time batched"], clock(400, 30), ODD_TIME),
  discharged: column(["Time discharged"], clock(470, 60), ODD_TIME),
  dischargeLimit: column(["Discharge limit (min)"], oneOf(90, 60), ODD_DURATION),
  aggregate: column(
    ["Aggregate", "Coarse aggregate type"],
    oneOf("expanded shale", "limestone", "slag", "not lightweight"),
  ),
  aggregateSize: column(
    ["Aggregate size", "Aggregate size (in)", "NMAS (mm)"],
    oneOf("3/4 in", 0.75, "19 mm", 1.5),
    [2, "2 in", 45_355, "big", "1 1/2", "⅜ in", "3-Apr"],
  ),
  wetSieved: column(["Wet sieved"], oneOf("no", null, "yes"), ODD_YES_NO),
  aggregateFactor: column(["Aggregate correction factor"], between(0, 0.6, 0.1), ["0,3", -0.1]),
  density: column(
    ["Density (pcf)", "Unit weight", "Fresh density (kg/m3)"],
    between(110, 150, 0.5),
    [2300, "142 pcf", 14, -1],
  ),
  theoreticalDensity: column(["Theoretical density"], between(140, 158, 0.5), [2450, 0, -1]),
  gravimetricAir: column(["Gravimetric air"], between(4, 9, 0.1), ["6,1", -2, 60]),
  densityTarget: column(["Specified density"], oneOf(115, 145), [1840, "115 pcf"]),
  densityLow: column(["Min density"], oneOf(110, 142)),
  densityHigh: column(["Max density"], oneOf(120, 150)),
  relativeYield: column(["Relative yield"], between(0.95, 1.05, 0.01), [3, -1, "1,01"]),
  measureVolume: column(
    ["Volume of the measure", "Measure volume (L)"],
    oneOf(0.25, 0.2, 7),
    ODD_MEASURED,
  ),
  slump: column(["Slump (in)", "Slump", "Slump (mm)"], between(1, 8, 0.25), [120, ...ODD_MEASURED]),
  nominalSlump: column(["Specified slump (in)", "Target slump"], oneOf(4, 5), ODD_MEASURED),
  concreteTemperature: column(
    ["Concrete temperature (°F)", "Concrete temp", "Mix temp"],
    between(50, 100, 1),
    [22, ...ODD_MEASURED],
  ),
  temperatureLow: column(["Min concrete temperature"], oneOf(50, 55), ODD_MEASURED),
  temperatureHigh: column(["Max concrete temperature"], oneOf(90, 95), ODD_MEASURED),
  airTemperature: column(
    ["Air temperature (°F)", "Ambient temp"],
    between(30, 105, 5),
    ODD_MEASURED,
  ),
  humidity: column(["Relative humidity", "Humidity (%)"], between(10, 100, 5), [0.4, 140, "40 %"]),
  wind: column(["Wind speed", "Wind (mph)"], between(0, 30, 1), ODD_MEASURED),
} as const satisfies Record<string, SheetColumn>;

/** Columns that the first version did not recognise. */
export const UNREAD: readonly SheetColumn[] = [
  column(["Remarks", "Notes"], oneOf("ok", "void", "sample spilled", null)),
  column(["Technician"], oneOf("J. Doe", "A. Bee")),
  column(["Ambient pressure"], oneOf(29.9, 1013)),
  column([""], oneOf(1, "a", null)),
  column(["2nd"], between(4, 8, 0.25)),
];
