import { check, findings } from "../../src/functions/field-sheet";
import { randomSheet } from "../digests/random-sheet";
import { WORKING_CALLS, type Given } from "../functions/working-calls";
import { Random } from "../simulation/random";
import { hostileCell } from "./hostile-cell";

/** A worksheet function and how a call of it is drawn. */
export interface Target {
  readonly id: string;
  readonly run: (...given: any[]) => unknown;
  /** Arguments that work, some of their cells exchanged for hostile ones. */
  readonly draw: (random: Random, hostileShare: number) => unknown[];
}

/** Every worksheet function. */
export const TARGETS: readonly Target[] = [
  ...WORKING_CALLS.map(([id, run, ...base]): Target => {
    return { id, run, draw: (...how) => argumentsLike(base as Given[], ...how) };
  }),
  { id: "CHECK", run: check, draw: tablesLike },
  { id: "FINDINGS", run: findings, draw: tablesLike },
];

/** A call of a function with arguments that nobody should give, among some that are plausible. */
export function hostileCall({ draw }: Target, random: Random): unknown[] {
  const given = draw(random, random.one([0, 0.05, 0.3, 1])).map((table) =>
    random.chance(0.06) ? misshapen(table as unknown[][], random) : table,
  );
  return random.chance(0.1) ? given.slice(0, random.whole(0, given.length)) : given;
}

/** An argument that is left out, is no table, or has rows that differ in length. */
function misshapen(table: unknown[][], random: Random): unknown {
  return random.one([
    ...[undefined, null, [], [[]], [[], [1]], {}, "x", 6, [6, 6]],
    table.map((row, i) => row.slice(0, i)),
    table.map((row, i) => (i === 1 ? null : row)),
    [table],
  ]);
}

function argumentsLike(base: readonly Given[], random: Random, hostileShare: number): unknown[] {
  const [rows, columns] = sizeOf(random);
  const cellFor = (working: unknown) =>
    random.chance(hostileShare) ? hostileCell(random) : nearlyWorking(working, random);
  const block = (working: unknown, high: number, wide: number) =>
    Array.from({ length: high }, () => Array.from({ length: wide }, () => cellFor(working)));
  return base.map((given) => {
    if (typeof given === "object") {
      if (random.chance(0.1)) return block(given[0], rows, columns);
      const series = given.map((value) => cellFor(value));
      return random.chance(0.5) ? [series] : series.map((cell) => [cell]);
    }
    if (base.some((other) => typeof other === "object") || random.chance(0.5))
      return [[cellFor(given)]];
    return block(given, rows, random.chance(0.5) ? columns : 1);
  });
}

/** Most ranges are small; a few are as large as a sheet of tests, up to 1,000 × 50. */
function sizeOf(random: Random): readonly [rows: number, columns: number] {
  if (random.chance(0.0001)) return [random.whole(100, 1000), random.whole(1, 50)];
  return [random.whole(1, 4), random.whole(1, 3)];
}

/** The cell that works, or one beside it. */
function nearlyWorking(cell: unknown, random: Random): unknown {
  if (typeof cell !== "number" || random.chance(0.7)) return cell;
  return random.one([
    cell + random.whole(-4, 4) / 4,
    cell * random.next() * 2,
    Math.round(cell) + 1,
  ]);
}

function tablesLike(random: Random, hostileShare: number): unknown[] {
  const { headers, rows, low, high } = randomSheet(random.whole(0, 1_000_000));
  const exchanged = (cells: readonly unknown[], share: number) =>
    cells.map((cell) => (random.chance(share) ? hostileCell(random) : cell));
  return [
    [exchanged(headers, hostileShare / 10)],
    rows.map((row) => exchanged(row, hostileShare)),
    [exchanged([low], hostileShare)],
    [exchanged([high], hostileShare)],
  ];
}
