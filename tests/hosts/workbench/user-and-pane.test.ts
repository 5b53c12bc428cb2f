import fc from "fast-check";
import { MARK_STYLES } from "../../../src/hosts/mark-style";
import { weightOfFormula } from "../../../src/hosts/mark-tag";
import type { Pause } from "../../../src/hosts/in-slices";
import type { SheetHost } from "../../../src/hosts/sheet-host";
import { markedCellsBySheet } from "../../../src/hosts/marked-cells";
import { checkAreaInSteps } from "../../../src/pane/state/checked-area";
import { paneCommands } from "../../../src/pane/state/commands";
import { marksOfFindings } from "../../../src/pane/state/marks-of-findings";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import type { CellValue } from "../../../src/measure/cell-value";
import { expectSame } from "../excel/expect-same";
import { noteEdit, table, type NoteEdit } from "../excel/user-and-twin";
import { withoutPauses } from "../without-pauses";
import { openWorkbench } from "./workbench-under-test";

jest.mock("@univerjs/core", () => jest.requireActual("./headless-univer").loadHeadlessUniver());
jest.mock("@univerjs/preset-sheets-core", () => jest.requireMock("@univerjs/core"));

/*
 * Random sequences of what a user does in the workbench, around checking, marking and removing marks, on the
 * real spreadsheet; and the same on another one that we are never in. At the end both hold the same.
 */

const SEQUENCES = Number(process.env.SEQUENCES ?? 1_000);
const SEED = Number(process.env.SEED ?? 173);
const LIMITS = { low: "4.5", high: "7.5" };

withoutPauses();
const ours = openWorkbench();
const twin = openWorkbench();
afterAll(() => [ours, twin].forEach(({ close }) => close()));

type Workbench = typeof ours;

/** What the user does at which of the next pauses; `undefined` once it is done. */
let meanwhile: { pause: number; readonly act: Act } | undefined;
const withUser =
  (pause: Pause = async () => {}): Pause =>
  async (share) => {
    if (meanwhile && (meanwhile.pause -= 1) < 1) {
      [ours, twin].forEach(meanwhile.act);
      meanwhile = undefined;
    }
    await pause(share);
  };
const breathing: SheetHost = {
  ...ours.host,
  mark: (marks, withNotes, checked, pause) =>
    ours.host.mark(marks, withNotes, checked, withUser(pause)),
  unmark: (pause) => ours.host.unmark(withUser(pause)),
};

// Each step of the work is as long as a slice, so that the page breathes behind each.
let now = 0;
beforeAll(() => void jest.spyOn(performance, "now").mockImplementation(() => (now += 30)));
afterAll(() => jest.restoreAllMocks());

const frontOf = ({ api }: Workbench) => api.getActiveWorkbook()!.getActiveSheet();

/** Something the user does to both. */
type Act = (workbench: Workbench) => void;

const row = fc.integer({ min: 0, max: 6 });
const column = fc.nat(4);
const held = fc.constantFrom<CellValue>(5, 5.25, 6, 12, null, "5.25", "six", -1, true);
const line = fc.constantFrom("Ask the driver.", "Ana:", "see\nbelow");

const typing = fc.tuple(row, column, held).map(
  ([r, c, value]): Act =>
    ({ edit }) =>
      edit(r, c, value),
);

/** Rows and columns put in, taken out, hidden. */
const moving: fc.Arbitrary<Act> = fc.oneof(
  row.map(
    (at): Act =>
      ({ insertRow }) =>
        insertRow(at),
  ),
  row.map(
    (at): Act =>
      ({ deleteRow }) =>
        deleteRow(at),
  ),
  column.map(
    (at): Act =>
      ({ insertColumn }) =>
        insertColumn(at),
  ),
  column.map(
    (at): Act =>
      (workbench) =>
        void frontOf(workbench).deleteColumn(at),
  ),
  row.map(
    (at): Act =>
      ({ hideRow }) =>
        hideRow(at),
  ),
);

/** Notes written, and ours edited. */
const noting: fc.Arbitrary<Act> = fc.tuple(row, column, line).map(
  ([r, c, text]): Act =>
    ({ giveNote }) =>
      giveNote(r, c, text),
);
const editingOurs = fc.record({
  kind: fc.constant("note" as const),
  which: fc.nat(5),
  change: noteEdit,
});

const asStep = (acts: fc.Arbitrary<Act>) => acts.map((act) => ({ kind: "user" as const, act }));
const commandWith = (meanwhile: fc.Arbitrary<Act>) =>
  fc.record({
    kind: fc.constantFrom("check" as const, "mark" as const, "mark" as const, "unmark" as const),
    // What the user does while the page breathes between two slices of the work.
    between: fc.option(fc.record({ pause: fc.integer({ min: 1, max: 9 }), act: meanwhile }), {
      nil: undefined,
      freq: 2,
    }),
  });
const lengths = { minLength: 2, maxLength: 6 };

/**
 * The grid loses notes, whoever wrote them, where rows are put in and taken out by turns. So notes are tried
 * on a sheet whose rows and columns stay, and moved rows and columns without notes.
 */
const sequence = fc.oneof(
  fc
    .array(fc.oneof(asStep(typing), asStep(moving), commandWith(fc.oneof(typing, moving))), lengths)
    .map((steps) => ({ withNotes: false, steps })),
  fc
    .array(
      fc.oneof(asStep(typing), asStep(noting), editingOurs, commandWith(fc.oneof(typing, noting))),
      lengths,
    )
    .map((steps) => ({ withNotes: true, steps })),
);

/** What a user sees of a sheet: cells, hidden rows, formats and notes. */
function seen(workbench: Workbench): unknown {
  const sheet = frontOf(workbench);
  const { cellData, rowData, rowCount, columnCount, mergeData } = sheet.getSheet().getSnapshot();
  return {
    ...{ cellData, rowData, rowCount, columnCount, mergeData },
    rules: sheet.getConditionalFormattingRules().map(({ rule, ranges }) => ({ rule, ranges })),
    notes: sheet
      .getNotes()
      .map(({ row: r, col, note }) => ({ row: r, col, note }))
      .sort((a, b) => a.row - b.row || a.col - b.col),
  };
}

/** Our fills as they lie on the sheet, by place. */
function fillsOnSheet(): Map<string, string> {
  const fills = new Map<string, string>();
  for (const { rule, ranges } of frontOf(ours).getConditionalFormattingRules()) {
    const weight = weightOfFormula(String((rule as { value?: unknown }).value ?? ""));
    if (!weight) continue;
    for (const { startRow, endRow, startColumn, endColumn } of ranges) {
      for (let r = startRow; r <= endRow; r += 1) {
        for (let c = startColumn; c <= endColumn; c += 1) {
          if (fills.has(`${r} ${c}`)) throw new Error(`the cell ${r} ${c} is marked twice`);
          fills.set(`${r} ${c}`, MARK_STYLES[weight].fill);
        }
      }
    }
  }
  return fills;
}

/** What a check of the same cells, as they are now, would mark. */
async function expectedFills(checked: Parameters<typeof ours.host.readAgain>[0]) {
  const read = await ours.host.readAgain(checked);
  const steps = checkAreaInSteps(read, { ...LIMITS, decimal: "." });
  for (;;) {
    const step = steps.next();
    if (!step.done) continue;
    return new Map(
      [...markedCellsBySheet(marksOfFindings(step.value)).values()].flatMap((cells) =>
        cells.map(
          ({ row: r, column: c, weight }) => [`${r} ${c}`, MARK_STYLES[weight].fill] as const,
        ),
      ),
    );
  }
}

/** The user edits a note of ours; on the twin what of it is theirs is a note of its own. */
function editOurNote(which: number, change: NoteEdit): void {
  const theirs = new Map(
    frontOf(twin)
      .getNotes()
      .map((note) => [`${note.row} ${note.col}`, note.note]),
  );
  const notes = frontOf(ours)
    .getNotes()
    .filter(({ row: r, col, note }) => theirs.get(`${r} ${col}`) !== note);
  const note = notes[which % Math.max(1, notes.length)];
  if (!note) return;
  const [now, own] = change(note.note, theirs.get(`${note.row} ${note.col}`));
  ours.giveNote(note.row, note.col, now);
  twin.giveNote(note.row, note.col, own);
}

test(`after each of ${SEQUENCES} sequences nothing of the user's is lost, and each mark lies on its test`, async () => {
  const counted = { marked: 0, notes: 0, errors: 0 };
  await fc.assert(
    fc.asyncProperty(table, sequence, async (rows, { steps, withNotes }) => {
      for (const workbench of [ours, twin]) {
        workbench.anew(rows);
        workbench.giveFormat(1, 1, "#00aa55");
        workbench.select([1, 1, 1, 1]);
      }
      const store = createPaneStore();
      const commands = paneCommands(store, breathing);
      store.set({ ...LIMITS, withNotes });
      await commands.check();
      for (const one of steps) {
        if (one.kind === "user") [ours, twin].forEach(one.act);
        else if (one.kind === "note") editOurNote(one.which, one.change);
        else {
          meanwhile = one.between && { ...one.between };
          await commands[one.kind]();
          const { error, checked } = store.get();
          if (error !== "") counted.errors += 1;
          else if (one.kind === "mark" && checked && (!one.between || meanwhile)) {
            const fills = fillsOnSheet();
            expect(fills).toEqual(await expectedFills(checked.read));
            counted.marked += fills.size;
            counted.notes += frontOf(ours).getNotes().length;
          }
        }
      }
      await ours.host.unmark();
      expectSame(seen(ours), seen(twin));
    }),
    { numRuns: SEQUENCES, seed: SEED },
  );
  expect(counted.marked).toBeGreaterThan(SEQUENCES / 2);
  expect(counted.notes).toBeGreaterThan(SEQUENCES / 4);
  expect(counted.errors).toBeGreaterThan(0);
}, 600_000);
