import { WORKING_CALLS, type WorkingCall } from "../functions/working-calls";
import { isOfTheFirstVersion } from "./kept";
import { Random } from "../simulation/random";

/** The arguments of one call of a worksheet function, and what they contain. */
export interface RandomCall {
  readonly given: readonly unknown[][][];
  readonly tags: ReadonlySet<string>;
}

/** Words that stand for an argument given as text, with those like it. */
const WORDS: readonly (readonly string[])[] = [
  ["us", "si", "US"],
  ["pt", "oz", "L", "mL", "fl oz"],
  ["ft3", "yd3", "m3", "cu yd"],
  ["C173", "C231", "C138", "C138M", "C143", "ASTM C1064M", "T 121"],
  ["one", "several", "2"],
  ["F1", "F2", "moderate", "severe", "category 2", "XF3", "no frost"],
  ["ACI 318-19", "ACI 211.1", "CSA A23.1", "EN 206", "UFC 3-250-04FA"],
  ["3/4", "3/4 in", "19 mm", "1 1/2", "20 mm"],
];

/** Cells that are odd in any argument, with a tag where one may want to treat them otherwise one day. */
const ODD: readonly (readonly [cell: unknown, tag?: string])[] = [
  ...([0, 1, -1, 1e-9, 1e9, 0.1 + 0.2, "abc", "5.25", " 6 %", "5 1/4"] as const).map(
    (cell) => [cell] as const,
  ),
  [null, "blank"],
  ["", "blank"],
  ["n/a", "blank"],
  [true, "true or false"],
  [{ code: "#N/A" }, "error"],
  ["5,25", "decimal comma"],
  ["48 oz", "unit in cell"],
  ["1e309", "beyond a number"],
  [-0, "negative zero"],
  ["-0", "negative zero"],
  [46_182, "date"],
  [1e300, "huge number"],
];

/** The same call for the same function and number. */
export function randomCall([id, , ...base]: WorkingCall, number: number): RandomCall {
  const random = new Random(number);
  const tags = new Set<string>();
  const oddShare = random.one([0, 0.1, 0.3]);
  const rows = random.chance(0.3) ? random.whole(2, 4) : 1;
  const cellFor = (value: number | string) => {
    const [cell, tag] = randomCell(value, random, oddShare);
    if (tag) tags.add(tag);
    return cell;
  };
  const given = base.map((value) => {
    if (typeof value === "object") {
      const cells = value.map((plain) => (random.chance(0.6) ? plain : cellFor(plain)));
      // The cylinders of a test stand side by side.
      return id === "STRENGTH.WITHINTEST" ? [cells] : cells.map((cell) => [cell]);
    }
    // One value beside a column is repeated.
    const cells = rows > 1 && random.chance(0.6) ? rows : 1;
    const column = Array.from({ length: cells }, () => [cellFor(value)]);
    if (new Set(column.flat()).size > 1) tags.add("several values");
    return column;
  });
  const isOffGrid = (cell: unknown) =>
    typeof cell === "number" && cell > 0 && cell < 15 && cell % 0.25 !== 0;
  const isShare = (cell: unknown) => typeof cell === "number" && cell > 0 && cell < 0.1;
  if (given.flat(2).some(isOffGrid)) tags.add("off-grid");
  if (given.flat(2).some(isShare)) tags.add("share of one");
  if (given.flat(2).some((cell) => typeof cell === "number" && cell > 12)) tags.add("many cups");
  const whole = random.chance(0.2) ? given.slice(0, random.whole(1, given.length)) : given;
  if (whole.length < given.length) tags.add("argument left out");
  return { given: whole, tags };
}

/** A cell for an argument: one that works or is near it, or an odd one with its tag. */
export function randomCell(
  value: number | string,
  random: Random,
  oddShare: number,
): readonly [cell: unknown, tag?: string] {
  return random.chance(oddShare) ? random.one(ODD) : [varied(value, random)];
}

function varied(value: number | string, random: Random): unknown {
  if (typeof value === "string") {
    return random.one(WORDS.find((words) => words.includes(value)) ?? [value]);
  }
  const vary = random.one([
    () => value,
    () => value + random.whole(-6, 6) / 4,
    () => Number((value * (1 + random.whole(-9, 9) / 20)).toPrecision(6)),
    () => Math.round(value) + random.whole(-2, 2),
  ]);
  return vary();
}

/** Every call whose digest is kept: so many of each function. */
export function* callsOf(calls: number): Generator<readonly [id: string, RandomCall, WorkingCall]> {
  for (const [at, call] of WORKING_CALLS.entries()) {
    if (!isOfTheFirstVersion(call[0])) continue;
    for (let i = 0; i < calls; i++) yield [call[0], randomCall(call, at * 1_000_003 + i), call];
  }
}
