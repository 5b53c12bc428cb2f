import type { FieldId } from "./fields";
import type { Guard, Term } from "./terms";
import type { Dimension } from "./units-in-header";

/** Terms that together mean a field. */
export interface Sense {
  /** One term of each group has to be there. */
  readonly needs: readonly (readonly Term[])[];
  /** Whether a yes says that all is in order. */
  readonly opposite: boolean;
  /** Whether the words are enough; else the cells have to hold what such a column holds. */
  readonly sure: boolean;
  /** Whether the words have to stand in this order: what was done after what. */
  readonly ordered: boolean;
  /** How surely the words say so, where it is not the number of needs that tells. */
  readonly weight: number | undefined;
}

/** What may be said of a field in a header. */
export interface FieldGrammar {
  readonly senses: readonly Sense[];
  /** Terms that may stand beside without meaning anything else. */
  readonly beside: ReadonlySet<Term>;
  /** What its unit may measure. */
  readonly units: readonly Dimension[];
}

/** What is said less plainly, in hundredths. */
const LESS_PLAIN = 63;
/** What is never read from these words alone. */
const TO_BE_ASKED = 50;

/** Terms that change nothing wherever they stand. */
export const LOOSE: ReadonlySet<Term> = new Set<Term>([
  "concrete",
  "test",
  "measured",
  "volumetric",
  "fresh",
  "of",
  "share",
  "bulk",
]);

/** Where even a loose term means another thing: a test for leaks that was made found none by that. */
export const NOT_LOOSE: Readonly<Partial<Record<FieldId, ReadonlySet<Term>>>> = {
  leak: new Set<Term>(["test"]),
};

/** Terms under whose titles the air test and its parts stand. */
const AIR_TEST =
  "air amount content meter method result reading reported sample number corrected added";

/**
 * What the terms of a header mean, the same in every language. "a b|c" needs a and one of b and c;
 * "!" before a sense: a yes says that all is in order; "?": only where the cells
 * agree; "~" behind it: said less plainly than another column may say it;
 * "^": to be asked about; ">": in this order.
 */
export const GRAMMAR: Readonly<Record<FieldId, FieldGrammar>> = {
  first: field(
    "reading first|initial, volumetric first|initial, meter reading first, ?meter first, ?roll first",
    `${AIR_TEST} neck roll after`,
    "percent divisions",
  ),
  second: field(
    "reading second|confirming|repeat|check, volumetric second|confirming, ?meter second, ?roll second, ?check~",
    `${AIR_TEST} neck roll after check`,
    "percent divisions",
  ),
  third: field(
    "reading third, volumetric third, ?meter third, ?roll third",
    `${AIR_TEST} neck roll after`,
    "percent divisions",
  ),
  final: field(
    "reading, reading final, reading settle, volumetric final reading",
    `air meter neck content number settle`,
    "percent divisions",
  ),
  cups: field("cup", "more late added number amount water total calibration", "percent"),
  alcohol: field("alcohol", "added amount volume total initial number before zero meter", "liquid"),
  alcoholUnit: field("alcohol unit", "amount volume", ""),
  alcoholStrength: field("alcohol strength|share, alcohol content share", "content", "percent"),
  lateAlcohol: field(
    "alcohol late, >alcohol after zero, >alcohol late zero, alcohol more^",
    "added left amount volume settle meter reading",
    "liquid yes-no",
  ),
  foam: field(
    "foam, !foam in-order",
    "size left neck reading amount high total volume first second third further",
    "divisions percent length",
  ),
  settle: field(
    "settle, settle time, !settle in-order, !settle allowed",
    "after end left reading neck number total amount foam further",
    "duration clock",
  ),
  packed: field(
    "packed, !dispersed, !dispersed in-order",
    "total left bowl meter inversion roll after amount",
    "yes-no",
  ),
  leak: field(
    "leak, !tight, !leak in-order, !tight in-order",
    "left meter roll inversion",
    "yes-no",
  ),
  air: field(
    `air, air content, air result|reported|corrected|final, volumetric reported|corrected|result,
      volumetric air final`,
    "volumetric total method meter content number result reported corrected final amount",
    "percent",
  ),
  low: field(
    "air low, limit low, specified low, air specified low",
    "limit content specified",
    "percent",
  ),
  high: field(
    "air high, limit high, specified high, air specified high",
    "limit content specified",
    "percent",
  ),
  target: field("air specified", "content limit", "percent"),
  tolerance: field("tolerance, air tolerance", "specified limit content", "percent"),
  water: field(
    "water before, water first, water initial",
    "alcohol added amount volume meter",
    "liquid",
  ),
  inversion: field(
    "inversion, inversion time, inversion total",
    "total amount meter first",
    "duration",
  ),
  longestInversion: field("inversion longest|high", "time total", "duration"),
  roll: field("roll, roll time", "total amount", "duration"),
  meter: field("meter number, meter serial, meter", "serial number air volumetric", ""),
  meterCheck: field(
    "meter calibration, meter calibration date, meter check, meter check date, calibration date, calibration final",
    "date air of final number",
    "",
  ),
  bowlVolume: field("bowl volume, meter volume", "size", "bulk liquid"),
  cupVolume: field("cup volume, cup size", "calibration", "liquid bulk"),
  start: field("test start, test start time, air start, test time~", "time air meter of", "clock"),
  sampledFrom: field(
    "sampled start, portion first, sampled time~, sample time~, sampled~",
    "time sample portion",
    "clock",
  ),
  sampledTo: field(
    "sampled end, portion final, sampled time end",
    "time sample portion end",
    "clock",
  ),
  batched: field("batched, batched time, load time, load start", "time load end start", "clock"),
  discharged: field("discharged, discharged time, discharged end", "time load end", "clock"),
  dischargeLimit: field("discharged limit|allowed|high", "time allowed limit", "duration"),
  revolutions: field("revolution", "total number amount load truck", ""),
  revolutionLimit: field("revolution allowed|limit|high", "number allowed limit", ""),
  deliveryStandard: field("load method, load specified", "discharged", ""),
  loadDecision: wholeHeadings(""),
  addedWater: wholeHeadings(""),
  waterAdditions: wholeHeadings(""),
  revolutionsAfterWater: wholeHeadings(""),
  adjusted: wholeHeadings("yes-no"),
  loadShare: wholeHeadings("percent"),
  samplingPlace: wholeHeadings(""),
  moulded: wholeHeadings("clock"),
  specifiedStrength: wholeHeadings("stress"),
  curingLow: wholeHeadings("temperature"),
  curingHigh: wholeHeadings("temperature"),
  date: field("date, ?test~, ?sampled~, ?cast~, date time", "sample sampled cast number day", ""),
  time: field("time, time day, test time, test time air, ?test~", "day", "clock"),
  sample: field(
    "sample number, sample, test number, set number, lab number, sample lab, sample batch, ?number~",
    "test set lab number air",
    "",
  ),
  load: field("load number, load, truck number~, truck~, batch number~, batch~", "number mix", ""),
  mix: field(
    "mix, mix number, mix class, concrete class|number|type",
    "number class type specified",
    "",
  ),
  method: field("method, test method, air method, test type", "air number", ""),
  repeatOf: field("repeat, repeat of, repeat test", "sample number", ""),
  checkOf: field("check of, check test, check test of, check sample", "sample number", ""),
  aggregate: field("aggregate type, aggregate", "content", ""),
  aggregateSize: field(
    "aggregate size, aggregate largest, largest size, aggregate high, aggregate nominal, largest",
    "nominal size high",
    "length",
  ),
  wetSieved: field("sieved", "sample", "yes-no"),
  aggregateFactor: field("aggregate correction", "air", "percent"),
  density: field(
    "density, density weight, density gravimetric, density result|measured|reported|fresh",
    "result reported",
    "density",
  ),
  theoreticalDensity: field("density theoretical", "weight", "density"),
  gravimetricAir: field("gravimetric air, gravimetric", "content result by density", "percent"),
  densityTarget: field("density specified", "weight", "density"),
  densityLow: field("density low", "specified limit weight", "density"),
  densityHigh: field("density high", "specified limit weight", "density"),
  relativeYield: field("yield relative", "", "percent"),
  measureVolume: field(
    "measure volume, measure density, measure bulk, measure",
    "density volume",
    "bulk liquid",
  ),
  slump: field("slump, slump result|measured|reported", "result reported number amount", "length"),
  nominalSlump: field("slump specified", "limit nominal", "length"),
  // A largest slump in a sheet may be the limit as well as the largest that was measured.
  slumpLow: wholeHeadings("length"),
  slumpHigh: wholeHeadings("length"),
  concreteTemperature: field(
    "temperature concrete, temperature mix, temperature fresh, temperature~, temperature result|measured~",
    "result mix time amount",
    "temperature",
  ),
  temperatureLow: field("temperature low", "specified limit", "temperature"),
  temperatureHigh: field("temperature high", "specified limit", "temperature"),
  dimension: field("dimension low", "size", "length"),
  airTemperature: field(
    "temperature air, temperature ambient",
    "air ambient time place",
    "temperature",
  ),
  humidity: field("humidity", "relative air ambient", "percent"),
  wind: field("wind, wind speed", "speed result", "speed"),
};

/** What a column may hold that is none of ours, though its words are of our trade. */
export const OTHER_MATTERS: readonly (readonly [Guard, FieldGrammar])[] = [
  [
    "calculation",
    field(
      "correction, correction alcohol|air|reading|meter|corrected, statistics",
      "air content reading alcohol slump temperature density cup result first second third sample test limit low high number total",
      "percent",
    ),
  ],
  [
    "other matter",
    field(
      "reading time, alcohol time, time cup",
      "first second third final initial meter start end",
      "clock duration",
    ),
  ],
  [
    "other matter",
    field(
      "slump high|low|tolerance, temperature tolerance, density tolerance, air temperature high|low, ambient high|low",
      "specified limit air ambient temperature",
      "length temperature density",
    ),
  ],
  [
    "other matter",
    field(
      "load volume, load size, load bulk, volume, size bulk, day, yield, yield volume",
      "total number cast amount",
      "bulk",
    ),
  ],
  [
    "other test",
    field(
      "strength, strength test, strength specified, strength day, sample type, sample size",
      "test concrete number specified result amount",
      "stress",
    ),
  ],
  ["running number", field("number", "", "")],
  ["other matter", field("ambient", "", "")],
  [
    "other matter",
    field(
      "water, water added, water total, water amount",
      "added amount total volume load",
      "liquid bulk mass dosage",
    ),
  ],
  ["other matter", field("meter type", "air", "")],
];

/** Whether the unit of a column can be that of a field; a question can be asked of each. */
export function mayHaveUnit(field: FieldId, unit: Dimension | undefined): boolean {
  return unit === undefined || unit === "yes-no" || GRAMMAR[field].units.includes(unit);
}

/**
 * @param senses Set off by commas.
 * @param beside Terms, set off by spaces.
 * @param units Dimensions, set off by spaces.
 */
/** A field that is known by its whole headings only. */
function wholeHeadings(units: string): FieldGrammar {
  return { ...field("", "", units), senses: [] };
}

function field(senses: string, beside: string, units: string): FieldGrammar {
  return {
    senses: senses.split(",").map((sense) => senseOf(sense.trim())),
    beside: new Set(listed(beside) as Term[]),
    units: listed(units) as Dimension[],
  };
}

function senseOf(written: string): Sense {
  const bare = written.replace(/^[!?>]|[~^]$/g, "");
  return {
    needs: listed(bare).map((group) => group.split("|") as Term[]),
    opposite: written.startsWith("!"),
    sure: !written.startsWith("?"),
    ordered: written.startsWith(">"),
    weight: written.endsWith("~") ? LESS_PLAIN : written.endsWith("^") ? TO_BE_ASKED : undefined,
  };
}

function listed(text: string): string[] {
  return text.split(/\s+/).filter((item) => item !== "");
}
