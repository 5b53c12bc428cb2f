import type { Evidence } from "./evidence";
import type { FieldId } from "./fields";
import type { Dimension } from "./unit-spellings";

/** How what stands in a column agrees with a field: 1 as it should be, 0 says nothing, -1 something else. */
export type Fit = -1 | 0 | 1;

/** A column says something from so many cells on. */
const ENOUGH = 3;
/** Share of the cells from which on a column is of a kind. */
const MOST = 0.65;
const FEW = 0.34;

type Judge = (cells: Evidence, unit?: Dimension) => Fit;

/** What the cells of each field hold. The ranges are wide: they tell quantities apart, they do not judge. */
const JUDGES: Readonly<Record<FieldId, Judge>> = {
  first: reading,
  second: reading,
  third: reading,
  final: reading,
  cups: (cells) =>
    cells.spelled > FEW ? 1 : cells.yesNo > MOST ? 0 : numeric(cells, 0, 30, cells.whole > MOST),
  alcohol: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 5000)),
  alcoholUnit: (cells) =>
    cells.text > MOST && cells.distinct <= 4 ? 1 : cells.numbers > 0 ? -1 : 0,
  alcoholStrength: (cells) => numeric(cells, 0, 100, cells.least > 30),
  lateAlcohol: (cells) => (cells.yesNo > FEW || cells.amount > FEW ? 1 : numeric(cells, 0, 5000)),
  foam: (cells) => (cells.yesNo > MOST || cells.spelled > 0 ? 0 : numeric(cells, 0, 12)),
  settle: (cells) => (cells.clock > FEW ? 0 : cells.yesNo > MOST ? -1 : numeric(cells, 0, 1800)),
  packed: yesNo,
  leak: yesNo,
  wetSieved: yesNo,
  air: (cells) => numeric(cells, -2, 30),
  low: (cells) => numeric(cells, 0, 25, cells.distinct <= 4),
  high: (cells) => numeric(cells, 0, 30, cells.distinct <= 4),
  target: (cells) => (cells.text > FEW ? 0 : numeric(cells, 0, 25)),
  tolerance: (cells) => (cells.text > FEW ? 0 : numeric(cells, 0, 6)),
  water: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 5000)),
  inversion: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 1200)),
  longestInversion: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 120)),
  roll: (cells, unit) => {
    if (cells.amount > MOST) return 1;
    return unit !== "duration" && isReading(cells) ? -1 : numeric(cells, 0, 1200);
  },
  meter: (cells) => (cells.date > MOST ? -1 : name(cells)),
  meterCheck: date,
  meterFault: yesNo,
  bowlVolume: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 20000)),
  cupVolume: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 200)),
  start: clock,
  sampledFrom: clock,
  sampledTo: clock,
  batched: clock,
  discharged: clock,
  dischargeLimit: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 300)),
  revolutions: (cells) => numeric(cells, 0, 1000, cells.whole > MOST),
  revolutionLimit: (cells) => numeric(cells, 0, 1000),
  deliveryStandard: anyName,
  loadDecision: anyName,
  addedWater: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 5000)),
  waterAdditions: (cells) => numeric(cells, 0, 20, cells.whole > MOST),
  revolutionsAfterWater: (cells) => numeric(cells, 0, 1000, cells.whole > MOST),
  adjusted: yesNo,
  loadShare: (cells) => numeric(cells, 0, 100),
  samplingPlace: (cells) => (cells.clock + cells.date > FEW ? -1 : cells.text > MOST ? 1 : 0),
  moulded: clock,
  batchWater: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 20000)),
  freeMoisture: (cells) => (cells.amount > MOST ? 1 : numeric(cells, -5000, 20000)),
  cementitious: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 50000)),
  waterCementLimit: (cells) => numeric(cells, 0, 1.5),
  exposureClass: anyName,
  cylinders: (cells) => numeric(cells, 0, 50, cells.whole > MOST),
  cylinderSize: anyName,
  firstCylinder: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 35000)),
  secondCylinder: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 35000)),
  thirdCylinder: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 35000)),
  specifiedStrength: (cells) =>
    cells.amount > MOST ? 1 : numeric(cells, 1, 35000, cells.distinct <= 4),
  curingLow: (cells, unit) => temperature(cells, unit),
  curingHigh: (cells, unit) => temperature(cells, unit),
  dimension: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 5000)),
  date,
  time: clock,
  sample: name,
  load: name,
  mix: name,
  method: (cells) => (cells.numbers > 0 && cells.number > FEW ? -1 : cells.text > MOST ? 1 : 0),
  repeatOf: anyName,
  checkOf: anyName,
  aggregate: (cells) => (cells.number > MOST ? -1 : cells.text > MOST ? 1 : 0),
  aggregateSize: (cells) => (cells.text > MOST || cells.yesNo > MOST ? -1 : 0),
  aggregateFactor: (cells) => numeric(cells, 0, 6),
  density: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 1, 4000, cells.least > 40)),
  theoreticalDensity: (cells) => numeric(cells, 1, 4000, cells.least > 40),
  gravimetricAir: (cells) => numeric(cells, -5, 40),
  densityTarget: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 1, 4000, cells.least > 40)),
  densityLow: (cells) => numeric(cells, 1, 4000, cells.least > 40),
  densityHigh: (cells) => numeric(cells, 1, 4000, cells.least > 40),
  relativeYield: (cells) => numeric(cells, 0.5, 120, cells.most < 1.3),
  measureVolume: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0.05, 20000)),
  slump: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 400)),
  nominalSlump: (cells) =>
    cells.text > FEW ? 0 : cells.amount > MOST ? 1 : numeric(cells, 0, 400),
  concreteTemperature: (cells, unit) => temperature(cells, unit),
  slumpLow: theSameForAll,
  slumpHigh: theSameForAll,
  temperatureLow: (cells, unit) => temperature(cells, unit),
  temperatureHigh: (cells, unit) => temperature(cells, unit),
  airTemperature: (cells, unit) => temperature(cells, unit),
  humidity: (cells) => numeric(cells, 0, 100, cells.most > 1),
  wind: (cells) => (cells.amount > MOST ? 1 : numeric(cells, 0, 100)),
};

/** How the cells of a column agree with a field. */
export function fitOf(field: FieldId, cells: Evidence, unit?: Dimension): Fit {
  if (cells.count === 0) return 0;
  const fit = JUDGES[field](cells, unit);
  if (isAnotherTest.has(field) && isReading(cells)) return -1;
  const isProof = JUDGES[field] === clock && isNoTime(cells);
  return cells.count < ENOUGH && fit < 0 && !isProof ? 0 : fit;
}

/** Whether a number is neither a day with its time nor hours and minutes, such as a ticket's. */
function isNoTime({ number, most }: Evidence): boolean {
  return number > MOST && most >= 1 && (most >= 2400 || most % 100 > 59);
}

/** Numbers within bounds; `likely` says whether they also look as they should. */
function numeric(cells: Evidence, low: number, high: number, likely = true): Fit {
  // Numbers below one look like times of day.
  const share = cells.number + cells.amount + cells.clock;
  if (share < FEW || cells.numbers === 0) return cells.clock > MOST ? 0 : -1;
  // One slip of the pen is no proof of another quantity.
  if (cells.least > high || cells.most < low) return -1;
  return share > MOST && likely && cells.least >= low && cells.most <= high ? 1 : 0;
}

/** A limit is the same for every test; two tests alike prove nothing. */
function theSameForAll(cells: Evidence): Fit {
  const alike = cells.distinct === 1 && cells.count >= ENOUGH;
  return cells.amount > MOST && alike ? 1 : numeric(cells, 0, 400, alike);
}

function reading(cells: Evidence): Fit {
  return numeric(cells, 0, 12, cells.quarters > 0.9);
}

function temperature(cells: Evidence, unit?: Dimension): Fit {
  if (cells.amount > MOST) return 1;
  if (unit === "temperature") return numeric(cells, -30, 130);
  return numeric(cells, -30, 130, cells.least > 0);
}

function yesNo(cells: Evidence): Fit {
  if (cells.yesNo > MOST) return 1;
  const ticked = cells.number > MOST && cells.least >= 0 && cells.most <= 1;
  if (ticked) return 0;
  return cells.yesNo < FEW && (cells.number > MOST || cells.amount + cells.date + cells.clock > FEW)
    ? -1
    : 0;
}

function clock(cells: Evidence): Fit {
  if (cells.clock > MOST) return 1;
  // A time with its day is a number or a text of a day.
  if (cells.date > MOST || (cells.number > MOST && cells.hoursMinutes === 1)) return 0;
  return cells.clock < FEW ? -1 : 0;
}

function date(cells: Evidence): Fit {
  if (cells.date > MOST) return 1;
  // A day written as 20260531 is a number.
  if (cells.number > MOST && cells.least >= 1900_01_01 && cells.most <= 2100_12_31) return 0;
  return cells.date < FEW ? -1 : 0;
}

function name(cells: Evidence): Fit {
  return isReading(cells) || cells.yesNo > MOST || cells.clock > MOST
    ? -1
    : cells.text + cells.number > MOST
      ? 1
      : 0;
}

/** Names of another test, which one quarter of a percent is enough to tell from a reading. */
const isAnotherTest: ReadonlySet<FieldId> = new Set<FieldId>(["repeatOf", "checkOf"]);

function isReading({ number, quarters, whole, most }: Evidence): boolean {
  return number > MOST && quarters > 0.9 && whole < 0.9 && most < 15;
}

function anyName(cells: Evidence): Fit {
  const reading = isReading(cells);
  return cells.yesNo > MOST || (cells.number > MOST && reading) ? -1 : 0;
}
