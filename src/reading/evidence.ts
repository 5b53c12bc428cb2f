import { isBlank, isCellError, type CellValue } from "../measure/cell-value";
import { isDitto } from "./ditto";
import { folded } from "../measure/folded";
import { spelledNumber } from "../measure/spelled-number";
import { monthNamed } from "../measure/month-names";

/** More cells than these tell nothing new. */
const MOST_CELLS = 200;
const LONGEST_TEXT = 60;

/** What stands in the cells of a column. Shares are of the cells that hold something. */
export interface Evidence {
  /** Cells that hold something. */
  readonly count: number;
  readonly numbers: number;
  /** Shares of cells that are a number, a day, a time of day, yes or no, an amount with a unit, other text. */
  readonly number: number;
  readonly date: number;
  readonly clock: number;
  readonly yesNo: number;
  readonly amount: number;
  readonly text: number;
  /** Share of the cells that are a number in words: "two", "none". */
  readonly spelled: number;
  /** Of the numbers, those of amounts with a unit too. */
  readonly least: number;
  readonly most: number;
  readonly whole: number;
  readonly quarters: number;
  readonly distinct: number;
  /** Whether the numbers are amounts of alcohol as they are measured out, in one of the usual units. */
  readonly asMeasuredOut: boolean;
  /** Share of the numbers that may be hours and minutes, such as 1310. */
  readonly hoursMinutes: number;
  /** The unit that stands behind most of the numbers. */
  readonly unit?: string;
}

type Kind = "number" | "date" | "clock" | "yesNo" | "amount" | "text";

const YES_NO =
  /^(?:y|n|yes|no|true|false|x|ok|none|nil|✓|✔|✗|s|si|sí|ninguna?|o|oui|non|neant|aucune?|j|ja|nein|keine?)$/;
const CLOCK =
  /^\d{1,2}\.\d{2}\s?uhr$|^\d{1,2}\s?[ap]\.?\s?m\.?$|^\d{4}\s?(?:h|hrs?|hours|uhr)$|^\d{1,2}\s?(?::|h)\s?\d{2}(?::\d{2})?\s?(?:[ap](?:\.?m\.?)?|uhr|h)?$/;
const DATE =
  /^(?:\d{4}[-/.]\d{1,2}[-/.]\d{1,2}(?!\d)|\d{1,2}[-/. ]\s?(?:\d{1,2}|[a-z]{3,10}\.?)[-/. ]\s?\d{2,4}$|[a-z]{3,10}\.? \d{1,2},? \d{4}$|\d{1,2}\.\s?\d{1,2}\.$)/;
const AMOUNT =
  /^(?:±|\+\/-)?\s?-?(?:\d+(?:[.,]\d+)?|\.\d+|(?:\d+[\s-])?\d{1,2}\/\d{1,2})[\s-]?[a-z°"″][a-z0-9°"″/. ]{0,11}$/;
const NUMBER = /^(?:±|\+\/-)?\s?-?(?:\d+(?:[.,]\d+)*|\.\d+|(?:\d+[\s-])?\d{1,2}\/\d{1,2})\s?%?$/;
const VULGAR: Readonly<Record<string, string>> = { "¼": "1/4", "½": "1/2", "¾": "3/4" };

/** The part of a serial day number that a sheet of our days can hold: 1982 to 2091. */
const isDayNumber = (value: number) => value >= 30_000 && value < 70_000;

const isStep = (value: number, step: number) => Number.isInteger(value / step);
/** Whether millilitres are a quarter of a US pint, 118.29 mL, or several, rounded to 1 mL. */
const isPints = (millilitres: number) =>
  Math.abs(millilitres - Math.round(millilitres / 118.294) * 118.294) < 1;
/** Amounts of alcohol in pints, ounces, litres and millilitres, as people measure them out (common practice). */
const MEASURES: readonly ((value: number) => boolean)[] = [
  (pints) => pints >= 0.5 && pints <= 6 && isStep(pints, 0.25),
  (ounces) => ounces >= 8 && ounces <= 96 && isStep(ounces, 4),
  (litres) => litres >= 0.2 && litres <= 2.9 && isStep(Math.round(litres * 100), 5),
  (millilitres) =>
    millilitres >= 200 && millilitres <= 2900 && (isStep(millilitres, 10) || isPints(millilitres)),
];

/** Looks at the cells of a column, at most 200 of them. */
export function evidenceOf(cells: readonly CellValue[]): Evidence {
  const kinds: Record<Kind, number> = {
    number: 0,
    date: 0,
    clock: 0,
    yesNo: 0,
    amount: 0,
    text: 0,
  };
  const numbers: number[] = [];
  const seen = new Set<string>();
  const units: string[] = [];
  let count = 0;
  let spelled = 0;
  for (const cell of cells.length > MOST_CELLS ? sampleOf(cells) : cells) {
    // A ditto mark is whatever stands above it.
    if (isBlank(cell) || isCellError(cell) || (typeof cell === "string" && isDitto(cell))) continue;
    count++;
    const text = textOf(cell);
    seen.add(text);
    const kind = kindOf(cell, text);
    kinds[kind]++;
    if (kind === "text" && spelledNumber(text) !== undefined) spelled++;
    if (kind === "amount") units.push(/[a-z°"″][a-z0-9°"″/. ]*$/.exec(text)?.[0].trim() ?? "");
    const value = kind === "number" || kind === "amount" ? valueOf(cell, text) : undefined;
    if (value !== undefined) numbers.push(value);
  }
  const share = (some: number, all = count) => (all === 0 ? 0 : some / all);
  return {
    count,
    numbers: numbers.length,
    number: share(kinds.number),
    date: share(kinds.date),
    clock: share(kinds.clock),
    yesNo: share(kinds.yesNo),
    amount: share(kinds.amount),
    text: share(kinds.text),
    spelled: share(spelled),
    least: Math.min(...numbers),
    most: Math.max(...numbers),
    whole: share(numbers.filter(Number.isInteger).length, numbers.length),
    quarters: share(numbers.filter((value) => Number.isInteger(value * 4)).length, numbers.length),
    distinct: seen.size,
    asMeasuredOut:
      numbers.length > 0 && MEASURES.some((fits) => numbers.every((n) => n === 0 || fits(n))),
    hoursMinutes: share(numbers.filter(isHoursMinutes).length, numbers.length),
    unit: unitOf(units, count),
  };
}

function isHoursMinutes(value: number): boolean {
  return Number.isInteger(value) && value >= 100 && value < 2400 && value % 100 < 60;
}

function unitOf(units: readonly string[], count: number): string | undefined {
  const [first] = units;
  const same = units.filter((unit) => unit === first).length;
  return first !== undefined && same * 3 >= count * 2 ? first : undefined;
}

/** Cells spread evenly over the column: its end may differ from its beginning. */
function sampleOf(cells: readonly CellValue[]): readonly CellValue[] {
  const step = cells.length / MOST_CELLS;
  return Array.from({ length: MOST_CELLS }, (_, i) => cells[Math.floor(i * step)]!);
}

/** What a single cell is, its text folded. */
export function kindOf(cell: CellValue, text: string): Kind {
  if (typeof cell === "boolean") return "yesNo";
  if (typeof cell === "number") {
    if (isDayNumber(cell)) return "date";
    return cell > 0 && cell < 1 && !Number.isInteger(cell * 20) ? "clock" : "number";
  }
  if (YES_NO.test(text)) return "yesNo";
  if (CLOCK.test(text)) return "clock";
  if (DATE.test(text) || isDayOfMonth(text) || isDayOfNamedMonth(text)) return "date";
  if (NUMBER.test(text)) return "number";
  return AMOUNT.test(text) ? "amount" : "text";
}

/** "6/10" is a day without its year where it is no fraction of a ruler. */
function isDayOfMonth(text: string): boolean {
  const [, one, other] = /^(\d{1,2})\/(\d{1,2})$/.exec(text) ?? [];
  if (one === undefined || other === undefined) return false;
  const isFraction = [2, 3, 4, 8, 16, 32].includes(Number(other)) && Number(one) < Number(other);
  return !isFraction && Math.max(Number(one), Number(other)) <= 31;
}

/** "Jun 3" and "3 juin": a day without its year. */
function isDayOfNamedMonth(text: string): boolean {
  const [, before, after] =
    /^(?:([a-z]{3,10})\.? \d{1,2}|\d{1,2}\.?[ -]([a-z]{3,10})\.?)$/.exec(text) ?? [];
  const name = before ?? after;
  return name !== undefined && monthNamed(name) !== undefined;
}

/** The number of a text such as "5 1/4", "±1.5" or "48 oz"; the first of several. */
function valueOf(cell: CellValue, text: string): number | undefined {
  if (typeof cell === "number") return cell;
  const found = /^[^\d.-]*(-?[\d.,]+(?!\/|\d))?[\s-]*(?:(\d+)\/(\d+))?/.exec(text);
  if (!found || (found[1] ?? found[2]) === undefined) return undefined;
  const whole = Number((found[1] ?? "0").replace(",", "."));
  return found[2] === undefined ? whole : whole + Number(found[2]) / Number(found[3]);
}

/** A cell's text, folded, with fractions in plain figures. */
export function textOf(cell: CellValue): string {
  const text = String(cell).slice(0, LONGEST_TEXT);
  return folded(text.replace(/[¼½¾]/g, (sign) => ` ${VULGAR[sign]}`)).trim();
}
