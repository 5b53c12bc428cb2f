import "../functions/custom-functions-runtime";
import { slowEachTime } from "../slow-each-time";

/** Nothing that is called takes more of the processor than this, ms. */
const LONGEST = 2_000;

/** No sentence is longer than this, in characters. */
const LONGEST_SENTENCE = 400;

/** What a call gives, and what of it no call should ever give. */
export interface CallOutcome {
  /** Whether some cell holds a value that is no blank and no error. */
  readonly hasValue: boolean;
  /** What is wrong with it, in words; none when every promise is kept. */
  readonly broken: readonly string[];
}

/** Calls a worksheet function and looks at all that comes out. */
export function outcomeOf(run: () => unknown): CallOutcome {
  const before = process.cpuUsage();
  const cells = cellsOf(run);
  const { user } = process.cpuUsage(before);
  const broken = new Set<string>();
  if (user > LONGEST * 1000 && slowEachTime(() => cellsOf(run), LONGEST))
    broken.add("takes too long");
  if (typeof cells === "string") return { hasValue: false, broken: [cells] };
  if (!isTable(cells)) return { hasValue: false, broken: ["gives no table"] };
  let hasValue = false;
  for (const cell of cells.flat()) {
    const wrong = wrongCell(cell);
    if (wrong) broken.add(wrong);
    hasValue ||= !(cell instanceof Error) && cell !== "";
  }
  return { hasValue, broken: [...broken] };
}

/** The cells; an error of the function as a whole is the only cell; a text for any other failure. */
function cellsOf(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    if (error instanceof CustomFunctions.Error) return [[error]];
    return `throws ${String(error)}`;
  }
}

function isTable(cells: unknown): cells is unknown[][] {
  if (!Array.isArray(cells) || cells.length === 0) return false;
  const rows = cells as unknown[];
  const [first] = rows;
  const width = Array.isArray(first) ? first.length : 0;
  return width > 0 && rows.every((row) => Array.isArray(row) && row.length === width);
}

function wrongCell(cell: unknown): string | undefined {
  if (cell instanceof Error) return wrongSentence(cell.message);
  if (typeof cell === "number") {
    return Number.isFinite(cell) && !Object.is(cell, -0) ? undefined : `gives ${String(cell)}`;
  }
  return typeof cell === "string" || typeof cell === "boolean" ? undefined : `gives ${typeof cell}`;
}

function wrongSentence(sentence: string): string | undefined {
  if (sentence.length > LONGEST_SENTENCE) return `says too much: ${sentence.slice(0, 80)}`;
  if (!/^[\p{Lu}\d“-][^]*[.?]$/u.test(sentence))
    return `says no sentence: ${sentence.slice(0, 80)}`;
  // What a user has typed stands in quotation marks.
  const ours = sentence.replace(/“[^”]*”/g, "");
  const leaks = /undefined|\bnull\b|NaN|Infinity|\[object|\{|: :|Big/.exec(ours);
  return leaks ? `says ${leaks[0]}: ${sentence.slice(0, 120)}` : undefined;
}
