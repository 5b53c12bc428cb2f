import { randomSheet } from "../digests/random-sheet";
import type { Random } from "../simulation/random";
import { hostileCell } from "./hostile-cell";

type Cells = unknown[][];

/** A sheet as a function is given it: a header row or none, the rows, and perhaps a setup. */
export interface HostileSheet {
  readonly headers: Cells;
  readonly rows: Cells;
  readonly setup: Cells;
}

const TITLES = ["Field tests", "Reading", "Air", "Fresh properties", "Pressure meter", "Specified"];
const SETTINGS = [
  ...["Header", "Taken for", "Unit", "Mix", "Low", "High", "Target", "Tolerance", "Source"],
  ...["alcohol", "cups", "not ours", "first reading", "oz", "mL", "6 ± 1.5", "4.5", "furlong"],
];

/** What people do to a sheet, and what no one would. */
const CHANGES: readonly ((cells: Cells, random: Random) => Cells)[] = [
  (cells, random) => [[random.one(TITLES)], [], ...cells],
  (cells, random) => [cells[0]!.map(() => random.one([null, ...TITLES])), ...cells],
  (cells) => cells[0]!.map((_, column) => cells.map((row) => row[column])),
  (cells, random) => cells.map((row) => inserted(row, random.whole(0, 20), null)),
  (cells, random) => [...cells, ["Total", ...cells[0]!.map(() => random.whole(0, 99))]],
  (cells) => [...cells, [], ...cells],
  (cells) => cells.map((row) => [...row, null, ...row]),
  (cells, random) => cells.map((row) => row.map((cell) => changed(cell, 0.05, random))),
  (cells, random) => [cells[0]!.map((cell) => changed(cell, 0.5, random)), ...cells.slice(1)],
  (cells, random) => cells.map((row) => row.slice(0, random.whole(0, row.length))),
];

function inserted(row: unknown[], at: number, cell: unknown): unknown[] {
  return [...row.slice(0, at), cell, ...row.slice(at)];
}

function changed(cell: unknown, share: number, random: Random): unknown {
  return random.chance(share) ? hostileCell(random) : cell;
}

function setupFor(headers: readonly string[], random: Random): Cells {
  const words = [...SETTINGS, ...headers];
  const line = (width: number) =>
    Array.from({ length: width }, () => changed(random.one(words), 0.1, random));
  const width = random.whole(1, 6);
  return [["Header", "Taken for", "Unit"], ...Array.from({ length: 6 }, () => line(width))];
}

/** The same sheet for the same numbers. */
export function hostileSheet(random: Random): HostileSheet {
  const plain = randomSheet(random.whole(0, 1e6));
  let cells: Cells = [[...plain.headers], ...plain.rows.map((row) => [...row])];
  for (let i = random.whole(0, 3); i > 0; i--) {
    if (cells[0] && cells[0].length > 0) cells = random.one(CHANGES)(cells, random);
  }
  const setup = random.chance(0.5) ? setupFor(plain.headers, random) : [[null]];
  if (random.chance(0.5)) return { headers: [[null]], rows: cells, setup };
  return { headers: cells.slice(0, 1), rows: cells.slice(1), setup };
}
