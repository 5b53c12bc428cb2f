import { createHash } from "node:crypto";
import "../functions/custom-functions-runtime";
import { check, findings } from "../../src/functions/field-sheet";
import type { CellValue } from "../../src/measure/cell-value";
import { readTable } from "../../src/reading/read-table";
import { callsOf } from "./random-call";
import { randomSheet } from "./random-sheet";

/** How many sheets, and how many calls of each function, are answered. */
const SHEETS = 5000;
const CALLS = 200;

/** One answer as a digest, with what was asked about. */
export interface Answer {
  /** "check", "findings", or the id of a worksheet function. */
  readonly of: string;
  /** Which of the random sheets or calls it answers. */
  readonly number: number;
  readonly digest: string;
  readonly tags: ReadonlySet<string>;
}

/** What the code answers now, without its sentences. */
export function answersNow(): Answer[] {
  const answers: Answer[] = [];
  for (let number = 0; number < SHEETS; number++) {
    const { headers, rows, low, high, tags: made } = randomSheet(number);
    const tags = withColumnNotRead(made, headers, rows);
    const given = [[[...headers]], rows, [[low]], [[high]]] as any[][][];
    const [h, r, l, u] = given as [any[][], any[][], any[][], any[][]];
    // The fourth cell of a row, and the last of a finding, are sentences.
    answers.push({ of: "check", number, tags, digest: digestOf(() => check(h, r, l, u), 3) });
    answers.push({ of: "findings", number, tags, digest: digestOf(() => found(h, r, l, u), 6) });
  }
  let number = 0;
  for (const [of, { given, tags }, [, run]] of callsOf(CALLS)) {
    answers.push({ of, number: number++ % CALLS, tags, digest: digestOf(() => run(...given)) });
  }
  return answers;
}

/** The tags of a sheet, with one more where a column holds something that is not read. */
function withColumnNotRead(
  tags: ReadonlySet<string>,
  headers: readonly CellValue[],
  rows: readonly (readonly CellValue[])[],
): ReadonlySet<string> {
  const { unread } = readTable({ headers, rows });
  return unread.length > 0 ? new Set([...tags, "column not read"]) : tags;
}

/** The list of findings without its closing line, which the first version did not have. */
function found(...given: Parameters<typeof findings>): unknown[][] {
  return findings(...given).filter((line) => line[2] !== "not-looked-at");
}

/** A short digest of the cells: numbers to 12 digits, errors as their codes. */
function digestOf(run: () => unknown[][], columns?: number): string {
  const shown = JSON.stringify(cellsOf(run).map((row) => row.slice(0, columns).map(plain)));
  return createHash("md5").update(shown).digest("base64url").slice(0, 4);
}

function cellsOf(run: () => unknown[][]): unknown[][] {
  try {
    return run();
  } catch (error) {
    return [[error]];
  }
}

function plain(cell: unknown): unknown {
  if (cell instanceof Error) return "code" in cell ? cell.code : `fails: ${cell.name}`;
  return typeof cell === "number" ? String(Number(cell.toPrecision(12)) + 0) : cell;
}
