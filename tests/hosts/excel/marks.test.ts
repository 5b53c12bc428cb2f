import fc from "fast-check";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { WorkbookModel } from "../../excel-client/workbook-model";
import { fillSheet, marksOn, randomCase, type SheetContent, type UserAct } from "./random-sheets";
import { expectSame } from "./expect-same";
import { withoutOurs } from "./without-ours";

const excel = startExcel();
const host = excelHost();
afterAll(untilReleased);

/** A workbook with the content on its first sheet. */
function workbookWith(content: SheetContent): WorkbookModel {
  const workbook = new WorkbookModel();
  fillSheet(workbook, workbook.front, content);
  return workbook;
}

function doAll(acts: readonly UserAct[], workbook: WorkbookModel): void {
  for (const act of acts) act(workbook, workbook.sheet(0));
}

describe("on 1,000 random sheets, with the user's fills, formats, notes, comments, merges and protection", () => {
  test("marking adds only marks, marking twice marks once, and taking off leaves no trace", async () => {
    let marked = 0;
    await fc.assert(
      fc.asyncProperty(randomCase, async ({ content, marks, acts, withNotes }) => {
        const untouched = workbookWith(content);
        excel.workbook = workbookWith(content);
        const toMark = marksOn(excel.workbook.front, marks);

        const { cells } = await host.mark(toMark, withNotes);
        marked += cells;
        const once = excel.workbook.snapshot();
        expectSame(withoutOurs(excel.workbook.sheets), untouched.snapshot());

        await host.mark(toMark, withNotes);
        expectSame(excel.workbook.snapshot(), once);

        doAll(acts, excel.workbook);
        doAll(acts, untouched);
        await host.unmark();
        expectSame(excel.workbook.snapshot(), untouched.snapshot());
      }),
      { numRuns: 1_000, seed: 173 },
    );
    // The sheets are not all protected: most of some 4,500 marks were really put.
    expect(marked).toBeGreaterThan(2_500);
  }, 60_000);
});
