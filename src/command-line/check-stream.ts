import { checkTests } from "../fieldsheet/check-table";
import type { CheckOptions } from "../fieldsheet/check-options";
import type { CheckResult } from "../fieldsheet/check-result";
import { shownValue, type CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import { say, sentenceOf } from "../messages/pane-catalogue";
import type { BlockPlace } from "../reading/block-place";
import { findTable, topOfHeaders } from "../reading/layout";
import { severalInRows, tooLong } from "../reading/several-in-rows";
import {
  titleOfAnotherMethod,
  type TitleOfAnotherMethod,
} from "../reading/title-of-another-method";
import { checkSheet } from "./check-sheet";
import { ReadAlike } from "./read-alike";
import { rowsOfStream } from "./rows-of-stream";
import type { Said, SaidFinding, SaidNotRead, SaidSheet } from "./said";
import { saidOfRows } from "./said-of-check";
import type { StreamedRow } from "./streamed-row";

/** How much of a stream is held. */
export interface BatchSize {
  /** Rows that are checked together. */
  readonly rows: number;
  /** Rows before and behind them that are looked at as well, so that tests of one sample find each other. */
  readonly neighbours: number;
}

const USUAL_SIZE: BatchSize = { rows: 10_000, neighbours: 500 };
/** Rows in which the header is looked for. */
const BEGINNING = 200;
/** Names and lines that are told one by one; after that only their number. */
const MOST_TOLD = 1000;

/** Rules that speak of several things of a sheet; others may count anew in each batch. */
const IS_WHAT_IT_SAYS: ReadonlySet<string> = new Set([
  "setup-not-applied",
  "said-once",
  "column-may-decide",
  "column-not-read",
]);

/**
 * Checks a stream of CSV or JSON lines in batches, so that memory does not grow with its length. Tests
 * are compared with the ones near them, see `BatchSize`.
 *
 * @param file The name under which it is spoken of.
 */
export async function* checkStream(
  file: string,
  pieces: AsyncIterable<Uint8Array>,
  options: CheckOptions,
  withTests: boolean,
  size = USUAL_SIZE,
): AsyncGenerator<Said> {
  const stream = new StreamCheck(file, options, withTests, size);
  try {
    for await (const row of rowsOfStream(file, pieces)) yield* stream.take(row);
    yield* stream.end();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    yield stream.notRead(error);
  }
}

class StreamCheck {
  private beginning: StreamedRow[] = [];
  private headers: readonly CellValue[] | undefined;
  /** Rows that are held, and the position of the first of them behind the header. */
  private held: (readonly CellValue[])[] = [];
  private lines: number[] = [];
  /** Of the held rows, the first whose findings are still to be said. */
  private next = 0;
  private told = 0;
  /** The rows above the header, and what they say of another method. */
  private head: readonly (readonly CellValue[])[] = [];
  private title: TitleOfAnotherMethod | undefined;
  /** The line of each row down to the header. */
  private linesAbove: readonly number[] = [];
  /** Whether another table has begun, of which nothing is read. */
  private isOver = false;
  private readonly ofTheSheet = new Set<string>();
  private readonly alike = new ReadAlike();
  private readonly total = { tests: 0, valid: 0, void: 0, incomplete: 0, findings: 0 };
  /** What no batch could look at. */
  private notLookedAt: SaidSheet["notLookedAt"] | undefined;

  constructor(
    private readonly file: string,
    private readonly options: CheckOptions,
    private readonly withTests: boolean,
    private readonly size: BatchSize,
  ) {}

  *take(row: StreamedRow): Generator<Said> {
    if (row.problem) yield* this.notReadOnce(row.problem, row.line);
    if (!row.cells) return;
    if (this.headers) yield* this.add(row);
    else {
      this.beginning.push(row);
      if (this.beginning.length >= BEGINNING) yield* this.begin();
    }
  }

  *end(): Generator<Said> {
    if (!this.headers) return yield* this.checkWhole();
    yield* this.check(this.held.length);
    if (this.total.tests === 0) {
      yield this.notRead(new Problem("file-without-tests", { name: this.file }));
      return;
    }
    yield { kind: "sheet", file: this.file, ...this.total, notLookedAt: this.notLookedAt ?? [] };
  }

  /** What ends before its header was looked for is read as a file is: a table that is anywhere in it, or forms. */
  private *checkWhole(): Generator<Said> {
    const rows = this.beginning.map(({ cells }) => cells!);
    const { hasTests, said } = checkSheet(
      this.file,
      undefined,
      rows,
      this.options,
      this.withTests,
      this.beginning.map(({ line }) => line),
    );
    yield* said;
    if (!hasTests) yield this.notRead(new Problem("file-without-tests", { name: this.file }));
  }

  notRead(problem: Problem, row?: number): SaidNotRead {
    const message = sentenceOf(problem.id, problem.values, problem.place);
    const amiss = problem.id !== "nul-bytes-left-out";
    return { kind: "not read", file: this.file, row, message, amiss };
  }

  /** Looks for the header in the first rows and takes what stands below it. */
  private *begin(): Generator<Said> {
    const rows = this.beginning.map(({ cells }) => cells!);
    const width = Math.max(0, ...rows.map((row) => row.length));
    const block = rows.map((row) => padded(row, width));
    if (severalInRows(block)) throw Problem.of(tooLong());
    const layout = Problem.unless(findTable(block, this.options.setup?.columns));
    const { table, headerRow } = layout;
    const top = topOfHeaders(layout);
    this.headers = table.headers;
    this.head = block.slice(0, top);
    this.title = titleOfAnotherMethod(block, top);
    this.linesAbove = this.beginning.slice(0, headerRow + 1).map(({ line }) => line);
    for (const row of this.beginning.slice(headerRow + 1)) yield* this.add(row);
    this.beginning = [];
  }

  private *add({ cells = [], line }: StreamedRow): Generator<Said> {
    if (this.isOver) return;
    const width = this.headers!.length;
    const beyond = cells.slice(width).some((cell) => cell !== null && cell !== "");
    if (beyond) yield* this.notReadOnce(new Problem("more-cells-than-headers", { line }), line);
    this.held.push(padded(cells.slice(0, width), width));
    this.lines.push(line);
    const { rows, neighbours } = this.size;
    if (this.held.length - this.next >= rows + neighbours) yield* this.check(this.next + rows);
  }

  /** Checks what is held and says what was found in the rows up to a position. */
  private *check(until: number): Generator<Said> {
    if (until <= this.next) return;
    const headers = this.headers!;
    const layout = {
      ...{ table: { headers, rows: this.held }, headerRow: this.linesAbove.length - 1 },
      headers: headers.map((header) => [shownValue(header)]),
    };
    const result = Problem.unless(
      checkTests({ layout, head: { rows: this.head, from: 0 }, title: this.title }, this.options),
    );
    const line = this.lines[this.next]!;
    for (const problem of this.alike.differences(result, this.held, line))
      yield this.notRead(problem, line);
    if (result.reading.headedAgain) {
      yield* this.say(result, this.held.length);
      this.isOver = true;
      this.next = this.held.length;
      return;
    }
    yield* this.say(result, until);
    const from = Math.max(0, until - this.size.neighbours);
    this.held = this.held.slice(from);
    this.lines = this.lines.slice(from);
    this.next = until - from;
  }

  private *say(result: CheckResult, until: number): Generator<Said> {
    const { total, next, lines, linesAbove, file } = this;
    const place = {
      file,
      at: (row: number) => ({ row: lines[row]! }),
      of: ({ row }: BlockPlace) => ({ row: (linesAbove[row] ?? lines[row - linesAbove.length])! }),
    };
    const inside = (row: number) => row >= next && row < until;
    for (const said of saidOfRows(result, place, this.withTests, inside)) {
      if (said.kind === "finding") {
        const isOfTheSheet = said.row === undefined || said.row <= linesAbove.at(-1)!;
        if (isOfTheSheet && !this.isNewOfTheSheet(said)) continue;
        total.findings++;
      }
      yield said;
    }
    for (const { state } of result.results.slice(next, until)) {
      if (state === "") continue;
      total.tests++;
      total[state]++;
    }
    const before = this.notLookedAt ?? result.notLookedAt;
    this.notLookedAt = before.filter((what) => result.notLookedAt.includes(what));
  }

  /** What concerns the sheet as a whole is said with the first batch in which it is so. */
  private isNewOfTheSheet({ rule, column, message }: SaidFinding): boolean {
    const what = IS_WHAT_IT_SAYS.has(rule) ? message : `${rule} ${column}`;
    const isNew = !this.ofTheSheet.has(what);
    this.ofTheSheet.add(what);
    return isNew;
  }

  private *notReadOnce(problem: Problem, line: number): Generator<Said> {
    this.told++;
    if (this.told <= MOST_TOLD) yield this.notRead(problem, line);
    if (this.told === MOST_TOLD + 1)
      yield {
        ...{ kind: "not read", file: this.file, row: line, amiss: true },
        message: say("more-lines-not-read", { count: MOST_TOLD }),
      };
  }
}

function padded(cells: readonly CellValue[], width: number): readonly CellValue[] {
  return cells.length === width
    ? cells
    : [...cells, ...Array<null>(width - cells.length).fill(null)];
}
