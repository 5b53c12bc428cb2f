import type { SheetLook } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";
import { cautionSentences } from "../kit/caution-sentences";
import { say } from "../../messages/pane-catalogue";
import { badgeWord } from "../kit/badge";
import type { ReportContent } from "./report-content";

/** A report as rows of cells. */
export interface ReportSheet {
  readonly rows: readonly (readonly CellValue[])[];
  readonly look: SheetLook;
}

/** Widths in characters: of a column of numbers and of words, at least and at most. */
const NARROW = 9;
const WIDE = 14;
const WIDEST = 24;
/** A sentence has at least so much room beside the first columns, however few there are. */
const LEAST_ROOM = 80;
/** The column in which the values of the head stand, and that of what findings say. */
const VALUES = 2;
const SENTENCES = 3;
/** After so many rows it is told how far the work is. */
const STEP = 500;

/**
 * Puts a report into rows of cells: the head, the table of tests, the findings, what was not checked, the
 * trend, cautions and lines to sign. In steps, each of which yields the share that is done.
 *
 * @param trend What the trend shows, in sentences.
 * @param broken Whether long sentences are parted over several rows, as a sheet needs it: what stands in
 *   one cell would be cut at the edge of the paper.
 */
export function* reportSheetInSteps(
  content: ReportContent,
  trend: readonly string[],
  broken: boolean,
): Generator<number, ReportSheet> {
  const { columns, tests, findings } = content;
  const rows: CellValue[][] = [];
  const bold: number[] = [];
  const widths = columns.map(({ label, words }) =>
    Math.min(WIDEST, Math.max(words ? WIDE : NARROW, label.length + 2)),
  );
  const whole = widths.reduce((sum, width) => sum + width, 0);
  const beside = whole - widths.slice(0, SENTENCES).reduce((sum, width) => sum + width, 0);
  const parted = (text: string, room: number) =>
    broken ? lines(text, Math.max(LEAST_ROOM, room)) : [text];
  const sentence = (text: string) => parted(text, whole).forEach((line) => rows.push([line]));
  const title = (text: string) => {
    if (rows.length > 0) rows.push([]);
    bold.push(rows.length);
    rows.push([text]);
  };

  title(say("report-title"));
  content.about.forEach(sentence);
  rows.push([]);
  for (const { field, value } of content.heading)
    rows.push([say(`report-head-${field}`), ...blanks(VALUES - 1), value]);
  title(say("report-counts"));
  content.counts.forEach(sentence);
  title(say("report-table"));
  bold.push(rows.length);
  rows.push(columns.map(({ label }) => label));
  for (const [i, test] of tests.entries()) {
    rows.push(columns.map(({ cell }) => cell(test)));
    if (i % STEP === 0) yield i / (tests.length + findings.length);
  }
  title(say("pane-findings"));
  if (findings.length === 0) sentence(say("pane-nothing-found"));
  for (const [i, { test, findings: ofTest }] of findings.entries()) {
    rows.push([test]);
    for (const { where, weight, sentence: said, decision } of ofTest) {
      const decided = decision ? [say("report-decided", { decision })] : [];
      const [first, ...more] = [said, ...decided].flatMap((text) => parted(text, beside));
      rows.push([where, badgeWord(weight), ...blanks(SENTENCES - 2), first!]);
      for (const line of more) rows.push([...blanks(SENTENCES), line]);
    }
    if (i % STEP === 0) yield (tests.length + i) / (tests.length + findings.length);
  }
  if (content.corrected.length > 0)
    title(say("review-corrected-before", { count: content.corrected.length }));
  content.corrected.forEach(sentence);
  title(say("pane-not-checked"));
  content.notChecked.forEach(sentence);
  if (trend.length > 0) title(say("trend-heading"));
  trend.forEach(sentence);
  title(say("report-method"));
  sentence(say("report-method-text"));
  title(say("pane-cautions"));
  cautionSentences().forEach(sentence);
  title(say("report-signatures"));
  for (const id of ["report-signed-tester", "report-signed-reviewer"] as const)
    rows.push([say(id)], [say("report-name-signature-date")], []);
  return { rows, look: { bold, widths } };
}

function blanks(count: number): null[] {
  return Array<null>(count).fill(null);
}

/** A text in lines of a length, parted between words; a longer word has a line of its own. */
function lines(text: string, length: number): string[] {
  const all: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > length) {
      all.push(line);
      line = word;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...all, line];
}
