import { SENTENCE_OF_CODE } from "../../../src/hosts/excel/excel-errors";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import type { Mark, SheetHost } from "../../../src/hosts/sheet-host";
import { Problem } from "../../../src/measure/problem";
import { everySentence, sentenceOf } from "../../../src/messages/pane-catalogue";
import { rectangleFrom } from "../../excel-client/block";
import type { FailureMoment } from "../../excel-client/emulated-excel";
import { startExcel } from "../../excel-client/excel-client";
import { WorkbookModel } from "../../excel-client/workbook-model";
import { documentedCodes } from "./error-codes";
import { expectSame } from "./expect-same";
import { withoutOurs } from "./without-ours";

/*
 * Every call of every command is made to fail in turn, with every documented code, before, halfway and after it
 * has done its work. Whatever happens: nothing of the user's is lost, the sentence is ours, and doing it again works.
 */

const excel = startExcel();
const host = excelHost();
const CODES = documentedCodes();
/** Codes that the host goes by, and some that it does not: enough where the moment is what matters. */
const SOME_CODES = [
  ...["GeneralException", "InvalidOperation", "ItemNotFound", "RangeExceedsLimit"],
  ...["ResponsePayloadSizeLimitExceeded", "OperationCellsExceedLimit", "AccessDenied", "Conflict"],
];
const MOMENTS: readonly { moment: FailureMoment; codes: readonly string[] }[] = [
  { moment: "before", codes: CODES },
  { moment: "halfway", codes: SOME_CODES },
  { moment: "after", codes: SOME_CODES },
];

/** A sheet of a user, with formats, notes and comments of their own. */
function openWorkbook(): WorkbookModel {
  const workbook = new WorkbookModel();
  const sheet = workbook.front;
  sheet.grid = [
    ["Sample", "First reading"],
    ["L-1", 5.25],
    ["L-2", 5.3],
  ];
  sheet.fills.push({ row: 1, column: 1, color: "#ffee00" });
  sheet.notes.push({ row: 1, column: 1, content: "Ask the driver." });
  sheet.comments.push({ id: workbook.newId(), row: 0, column: 0, content: "Whose?" });
  sheet.formats.push({
    id: workbook.newId(),
    type: "Custom",
    areas: [rectangleFrom("B2:B3")],
    formula: "=B2>5",
    fill: "#00aa55",
    ink: "#000000",
  });
  workbook.select(sheet, rectangleFrom("A1:B3"));
  workbook.addSheet("Mixes");
  return workbook;
}

function marks(): Mark[] {
  const { id } = excel.workbook.sheet(0);
  return [1, 2].map((row) => ({
    sheetId: id,
    row,
    column: 1,
    weight: row === 1 ? "error" : "doubt",
    sentences: ["Look at this reading."],
  }));
}

interface Command {
  readonly name: string;
  /** What has been done before, without a fault. */
  readonly before: () => Promise<unknown>;
  readonly act: (host: SheetHost) => Promise<unknown>;
  /** What the command has come to, once it has worked. */
  readonly outcome: (result: unknown) => unknown;
}

const nothing = async (): Promise<void> => undefined;
const TABLE = [
  ["Sample", "Message"],
  ["L-1", "Look at this reading."],
];

const COMMANDS: readonly Command[] = [
  { name: "read the selection", before: nothing, act: (h) => h.read("selection"), outcome: whole },
  { name: "read the table", before: nothing, act: (h) => h.read("table"), outcome: whole },
  { name: "mark", before: nothing, act: (h) => h.mark(marks(), true), outcome: sheetsNow },
  {
    name: "mark again",
    before: () => host.mark(marks(), true),
    act: (h) => h.mark(marks().slice(1), true),
    outcome: sheetsNow,
  },
  {
    name: "unmark",
    before: () => host.mark(marks(), true),
    act: (h) => h.unmark(),
    outcome: sheetsNow,
  },
  {
    name: "write the results sheet",
    before: nothing,
    act: (h) => h.writeResultsSheet("Findings", TABLE),
    outcome: (name) => excel.workbook.sheets.find((sheet) => sheet.name === name)?.grid,
  },
  {
    name: "add a chart",
    before: nothing,
    act: (h) =>
      h.addChart!({
        sheetName: "Findings",
        title: "Air",
        names: ["L-1"],
        lines: [{ name: "Air", values: [5.25] }],
      }),
    outcome: (name) => excel.workbook.sheets.find((sheet) => sheet.name === name)?.charts,
  },
  {
    name: "select a cell",
    before: nothing,
    act: (h) => h.select({ sheetId: excel.workbook.sheet(1).id, row: 2, column: 2 }),
    outcome: () => [excel.workbook.front.name, excel.workbook.selection],
  },
  {
    name: "keep settings",
    before: nothing,
    act: (h) => h.saveSettings({ low: 4.5 }),
    outcome: () => [...excel.workbook.settings],
  },
];

function whole(result: unknown): unknown {
  return result;
}

function sheetsNow(): unknown {
  return excel.workbook.snapshot();
}

/** The user's own sheets, without marks and results sheets of ours. */
function ofTheUser(): unknown {
  return withoutOurs(excel.workbook.sheets.filter(({ name }) => !name.startsWith("Findings")));
}

describe.each(COMMANDS)("$name", ({ before, act, outcome }) => {
  test.each(MOMENTS)(
    "fails $moment any of its calls and loses nothing",
    async ({ moment, codes }) => {
      excel.workbook = openWorkbook();
      await before();
      const expected = outcome(await act(host));
      let failed = 0;
      for (const code of codes) {
        for (let call = 1; ; call += 1) {
          excel.workbook = openWorkbook();
          const untouched = ofTheUser();
          await before();
          excel.failCall(call, code, moment);
          const problem = await act(host).then(
            () => undefined,
            (error: unknown) => error,
          );
          if (excel.takeBackFailure()) break;
          failed += 1;
          expectSame(ofTheUser(), untouched);
          if (problem !== undefined) {
            expect(problem).toBeInstanceOf(Problem);
            const { id, values } = problem as Problem;
            expect(Object.keys(everySentence)).toContain(id);
            expect(sentenceOf(id, values)).not.toMatch(/raw text of the host/);
          }
          expectSame(outcome(await act(host)), expected);
          expectSame(ofTheUser(), untouched);
        }
      }
      expect(failed).toBeGreaterThanOrEqual(codes.length);
    },
    60_000,
  );
});

test("each documented code has a sentence of its own choosing", () => {
  for (const code of CODES) expect(SENTENCE_OF_CODE).toHaveProperty([code]);
  expect(CODES.length).toBeGreaterThan(45);
});

test("an error that nobody has documented still gets a sentence of ours", async () => {
  excel.workbook = openWorkbook();
  excel.failCall(1, "SomethingNew");
  await expect(host.read("selection")).rejects.toEqual(new Problem("host-failed"));
});
