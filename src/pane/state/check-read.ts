import { columnLetters } from "../../hosts/cell-address";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import type { SheetReading } from "../../reading/sheet-reading";
import { inSlices } from "../../hosts/in-slices";
import { checkAreaInSteps, type CheckedArea } from "./checked-area";
import type { Job } from "./one-at-a-time";
import type { PaneState, PaneStore } from "./pane-state";
import { foundAgain, subjectOf } from "./review/finding-on-sheet";
import {
  correctionKey,
  noticedBetween,
  noticedInReview,
  stillGone,
} from "./review/noticed-corrections";
import { reviewOf } from "./review/review-of";
import { reviewIn } from "./review/review-on-sheet";
import { REVIEW_SHEET } from "../../review/review-entry";
import { isLackOfTests } from "./lack-of-tests";
import { unreadTable } from "./setup/column-lines";
import { withChoices } from "./setup/choices";

/** Checks what was read and keeps what was found. @returns What there is to say about it. */
export async function checkRead(
  store: PaneStore,
  host: SheetHost,
  read: ReadArea,
  decimal: DecimalMark,
  job: Job,
): Promise<string[]> {
  const { low, high, datesFrom, setup: kept, choices } = store.get();
  const setup = withChoices(kept?.setup, choices);
  const given = { low, high, decimal, datesFrom, setup };
  const checked = await inSlices(checkAreaInSteps(read, given), job.pause).catch((error) => {
    if (isLackOfTests(error)) store.set({ unread: unreadTable(read, setup.columns) });
    throw error;
  });
  const review = await reviewIn(host, read.area.sheetName);
  // What was found is drawn at one go: the page comes in before.
  await job.pause();
  const before = store.get();
  store.set({
    ...carriedOver(before, checked),
    checked,
    review,
    unread: undefined,
    fresh: new Set(),
    elsewhere: [],
  });
  noticeInReview(store);
  const { results, findings, reading } = checked.result;
  const tests = results.filter(({ state }) => state !== "").length;
  return [
    say("pane-checked", { address: read.address, tests, findings: findings.length }),
    ...saidOfForms(reading),
    ...notRead(read),
    ...(before.review.there && !review.there ? [say("review-gone", { sheet: REVIEW_SHEET })] : []),
  ];
}

/** Says how the tests stand on the sheet, where it is not one a row. */
function saidOfForms({ forms, inTable }: SheetReading): string[] {
  if (forms === undefined) return [];
  return [inTable ? say("pane-rows-are-no-tests") : say("pane-forms", { forms })];
}

/** Says which filled cells beside what was checked were not read. */
export function notRead({ below, beside = [], cut = [] }: ReadArea): string[] {
  return [
    ...(below
      ? [say("pane-not-read-below", { from: below.row + 1, to: below.row + below.rows })]
      : []),
    ...beside.map(({ column, columns }) => {
      const [from, to] = [column, column + columns - 1].map(columnLetters);
      return say("pane-columns-not-read", { from: from!, to: to! });
    }),
    ...(cut.includes("top") ? [say("pane-not-read-above")] : []),
  ];
}

/** What of a review goes on from one check of a sheet to the next. */
function carriedOver(
  { checked: before, chosen, corrections, noCorrections }: PaneState,
  now: CheckedArea,
): Pick<PaneState, "chosen" | "corrections"> {
  if (before?.read.area.sheetId !== now.read.area.sheetId)
    return { chosen: undefined, corrections: [] };
  const noticed = [...corrections, ...noticedBetween(before, now)];
  return {
    chosen: chosen && foundAgain([subjectOf(chosen, before)], now)[0],
    corrections: stillGone(noticed, now).filter((one) => !noCorrections.has(correctionKey(one))),
  };
}

/** Adds what was corrected since something was decided of it. */
function noticeInReview(store: PaneStore): void {
  const { checked, review, corrections, noCorrections } = store.get();
  const noticed = noticedInReview(checked!, reviewOf(checked!, review));
  if (noticed.length === 0) return;
  const all = stillGone([...noticed, ...corrections], checked!);
  store.set({ corrections: all.filter((one) => !noCorrections.has(correctionKey(one))) });
}
