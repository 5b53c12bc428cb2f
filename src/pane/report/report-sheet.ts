import type { SheetLook, SheetPicture } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";
import { cautionSentences } from "../kit/caution-sentences";
import { say } from "../../messages/pane-catalogue";
import { badgeWord } from "../kit/badge";
import type { ReportContent } from "./report-content";
import type { ShownTrends } from "./report-trend";
import { sheetPicture } from "./sheet-picture";

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
/** The least height of a row of a sheet, in pixels of a screen: that of the usual font at its least. */
const ROW_HEIGHT = 17;
/** Between the margins of a page that lies, in pixels of a screen; letter is the less wide, A4 the less high. */
const PAGE = { width: 960, height: 660, row: 20 };
/** The width of a character of the usual font. */
const CHARACTER = 7;
/** The column in which the values of the head stand, and that of what findings say. */
const VALUES = 2;
const SENTENCES = 3;
/** After so many rows it is told how far the work is. */
const STEP = 500;

/**
 * Puts a report into rows of cells: the head, the table of tests, the findings, what was not checked, the
 * trend, cautions and lines to sign. In steps, each of which yields the share that is done.
 *
 * @param shown What the trend shows; a picture lies on blank rows of its own.
 * @param broken Whether long sentences are parted over several rows, as a sheet needs it: what stands in
 *   one cell would be cut at the edge of the paper.
 */
export function* reportSheetInSteps(
  content: ReportContent,
  shown: ShownTrends,
  broken: boolean,
): Generator<number, ReportSheet> {
  const { columns, tests, findings } = content;
  const rows: CellValue[][] = [];
  const bold: number[] = [];
  const pictures: SheetPicture[] = [];
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
  const room = roomOfPage(whole);
  const breaks: number[] = [];
  if (shown.trends.length > 0) title(say("trend-heading"));
  if (shown.trends.some(({ drawing }) => drawing)) breaks.push(rows.length - 1);
  for (const { group, title: of, words, drawing } of shown.trends) {
    const before = rows.length;
    sentence(`${group}: ${words}`);
    if (!drawing) continue;
    const needed = rows.length + Number(drawing.getAttribute("height")) / ROW_HEIGHT;
    if (pictures.length > 0 && needed - breaks.at(-1)! > room) breaks.push(before);
    const picture = sheetPicture(drawing, `${of} ${words}`, rows.length);
    pictures.push(picture);
    for (let high = 0; high < picture.height; high += ROW_HEIGHT) rows.push([]);
  }
  shown.left.forEach(sentence);
  title(say("report-method"));
  sentence(say("report-method-text"));
  title(say("pane-cautions"));
  cautionSentences().forEach(sentence);
  title(say("report-signatures"));
  for (const id of ["report-signed-tester", "report-signed-reviewer"] as const)
    rows.push([say(id)], [say("report-name-signature-date")], []);
  return { rows, look: { bold, widths, pictures, breaks } };
}

/** Rows that a page has room for, which is made as wide as the columns are, in characters. */
function roomOfPage(width: number): number {
  return (PAGE.height * Math.max(1, (width * CHARACTER) / PAGE.width)) / PAGE.row;
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
