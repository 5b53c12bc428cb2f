import { quoted, shownValue, type CellValue } from "../measure/cell-value";
import { Problem } from "../measure/problem";
import {
  DECISIONS,
  HEADING_IDS,
  HEADINGS,
  REVIEW_SHEET,
  type Decision,
  type Heading,
  type ReviewEntry,
} from "./review-entry";
import { timeOf } from "./time-of-entry";

/** What stands on the sheet of a review. */
export interface Review {
  readonly entries: readonly ReviewEntry[];
  /** Lines that were not taken, and why. */
  readonly notTaken: readonly Problem[];
}

/** Where each heading stands, from 0. */
export type HeadingPlaces = Readonly<Record<Heading, number>>;

/**
 * Reads a review from the cells of its sheet. The table may stand anywhere on it, its columns in any
 * order, with columns and lines of the user's own between them: those are left alone.
 *
 * @param firstLine The line of the sheet on which the cells begin, from 1.
 * @returns A problem where the sheet holds something, but no review.
 */
export function readReview(
  cells: readonly (readonly CellValue[])[],
  firstLine = 1,
): Review | Problem {
  if (cells.every((row) => row.every(isEmpty))) return { entries: [], notTaken: [] };
  const entries: ReviewEntry[] = [];
  const notTaken: Problem[] = [];
  let places: HeadingPlaces | undefined;
  for (const [i, row] of cells.entries()) {
    const headed = headingPlaces(row);
    if (headed) places = headed;
    if (headed || !places) continue;
    const entry = entryOn(row, places, firstLine + i);
    if (entry === undefined) continue;
    if (entry instanceof Problem) notTaken.push(entry);
    else entries.push(entry);
  }
  return places ? { entries, notTaken } : notAReview(cells);
}

/** The places of all headings in a row; `undefined` where one is missing. */
export function headingPlaces(row: readonly CellValue[]): HeadingPlaces | undefined {
  const names = row.map(plainly);
  const places = HEADING_IDS.map((id) => [id, names.indexOf(HEADINGS[id])] as const);
  return places.every(([, at]) => at >= 0)
    ? (Object.fromEntries(places) as HeadingPlaces)
    : undefined;
}

/** Names what is missing in the row that is most like a row of headings. */
function notAReview(cells: readonly (readonly CellValue[])[]): Problem {
  const known = (row: readonly CellValue[]) => {
    const names = new Set(row.map(plainly));
    return HEADING_IDS.map((id) => HEADINGS[id]).filter((heading) => !names.has(heading));
  };
  const missing = cells
    .map(known)
    .reduce((one, other) => (other.length < one.length ? other : one));
  return new Problem("review-sheet-not-ours", { sheet: REVIEW_SHEET, missing: missing.join(", ") });
}

function entryOn(
  row: readonly CellValue[],
  places: HeadingPlaces,
  line: number,
): ReviewEntry | Problem | undefined {
  const text = (heading: Heading) => shownValue(row[places[heading]]).trim();
  // A line without a rule and a decision is one that the user keeps there.
  if (text("rule") === "" && text("decision") === "") return undefined;
  const decision = decisionNamed(text("decision"));
  const where = { sheet: REVIEW_SHEET, line };
  if (!decision)
    return new Problem("review-decision-unknown", { ...where, decision: quoted(text("decision")) });
  const time = timeOf(row[places.time]);
  if (time === undefined)
    return new Problem("review-time-unreadable", { ...where, time: quoted(text("time")) });
  const lacking = required(decision).filter((heading) => text(heading) === "");
  if (lacking.length > 0) {
    const missing = lacking.map((heading) => HEADINGS[heading]).join(", ");
    return new Problem("review-line-incomplete", { ...where, decision, missing });
  }
  const texts = Object.fromEntries(HEADING_IDS.map((id) => [id, text(id)]));
  return { ...(texts as Record<Heading, string>), time, decision, line };
}

/** In English as the pane writes it, or as somebody writes it by hand in Spanish. */
function decisionNamed(written: string): Decision | undefined {
  const word = written.toLowerCase();
  return DECISIONS.find((known) => known === word) ?? IN_SPANISH[word];
}

const IN_SPANISH: Readonly<Record<string, Decision>> = {
  aceptado: "accepted",
  corregido: "corrected",
  abierto: "open",
};

/** What a line needs to count: nobody accepts without a reason, and nothing is decided by nobody. */
function required(decision: Decision): readonly Heading[] {
  if (decision === "renamed") return ["sheet", "oldValue", "initials"];
  return ["sheet", "rule", "initials", ...(decision === "accepted" ? (["reason"] as const) : [])];
}

function plainly(cell: CellValue): string {
  return shownValue(cell).trim().toLowerCase();
}

function isEmpty(cell: CellValue): boolean {
  return plainly(cell) === "";
}
