import fc from "fast-check";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import { placeKey } from "../../../src/hosts/excel/note-places";
import { MARK_STYLES } from "../../../src/hosts/mark-style";
import { markedCellsBySheet } from "../../../src/hosts/marked-cells";
import type { ReadArea } from "../../../src/hosts/sheet-host";
import { cellValueFrom } from "../../../src/measure/cell-value";
import { checkAreaInSteps } from "../../../src/pane/state/checked-area";
import { paneCommands } from "../../../src/pane/state/commands";
import { followEdits } from "../../../src/pane/state/listening";
import { marksOfFindings } from "../../../src/pane/state/marks-of-findings";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { WorkbookModel } from "../../excel-client/workbook-model";
import { withoutPauses } from "../without-pauses";
import { expectSame } from "./expect-same";
import { meanwhile, Pair, table, userAct } from "./user-and-twin";

/*
 * Random sequences of what a user does, around checking, marking, checking live and removing marks: at the end
 * everything that is not ours is, letter for letter, as if we had never been there, and each mark is put on the
 * test that it is about.
 */

/** In each of the two files. More or others on demand: SEQUENCES=100000 SEED=7 npx jest user-and. */
const SEQUENCES = Number(process.env.SEQUENCES ?? 1_000);
const SEED = Number(process.env.SEED ?? 173);

const excel = startExcel();
afterAll(untilReleased);

withoutPauses();

const LIMITS = { low: "4.5", high: "7.5" };

const step = fc.oneof(
  { weight: 6, arbitrary: userAct.map((act) => ({ kind: "user" as const, act })) },
  { weight: 1, arbitrary: fc.constant({ kind: "undo" as const }) },
  {
    weight: 4,
    arbitrary: fc.record({
      kind: fc.constantFrom("check" as const, "mark" as const, "mark" as const, "unmark" as const),
      // What somebody does right before one of its requests.
      between: fc.option(fc.record({ call: fc.integer({ min: 1, max: 7 }), act: meanwhile }), {
        nil: undefined,
        freq: 3,
      }),
    }),
  },
);

function openPane(live: boolean) {
  const store = createPaneStore();
  const host = excelHost();
  const commands = paneCommands(store, host);
  if (live) followEdits(store, host, commands);
  store.set({ ...LIMITS, live });
  return { store, commands };
}

/** What the marks of a check of the same cells, read from the sheet itself just now, look like. */
function expectedFills({ area }: ReadArea): Map<string, string> {
  const { row, column, rows, columns } = area;
  const { grid } = excel.workbook.sheet(0);
  const values = Array.from({ length: rows }, (_, r) =>
    Array.from({ length: columns }, (_, c) => cellValueFrom(grid[row + r]?.[column + c] ?? "")),
  );
  const steps = checkAreaInSteps({ area, address: "", values }, { ...LIMITS, decimal: "." });
  for (;;) {
    const step = steps.next();
    if (!step.done) continue;
    const fills = new Map<string, string>();
    for (const cells of markedCellsBySheet(marksOfFindings(step.value)).values()) {
      for (const cell of cells) fills.set(placeKey(cell), MARK_STYLES[cell.weight].fill);
    }
    return fills;
  }
}

/** Our fills as they lie on the sheet. */
function fillsOnSheet(): Map<string, string> {
  const fills = new Map<string, string>();
  const ours = excel.workbook.sheet(0).formats.filter(({ formula }) => /fresh-mark/.test(formula));
  for (const { areas, fill } of ours) {
    for (const { top, left, bottom, right } of areas) {
      for (let row = top; row <= bottom; row += 1) {
        for (let column = left; column <= right; column += 1) {
          const place = placeKey({ row, column });
          if (fills.has(place)) throw new Error(`the cell ${place} is marked twice`);
          fills.set(place, fill);
        }
      }
    }
  }
  return fills;
}

/**
 * Runs the sequences of one file of tests.
 *
 * @param live Whether the pane checks again after each edit of the user.
 */
export function testSequences(live: boolean): void {
  test(`after each of ${SEQUENCES} sequences nothing of the user's is lost, and no mark was put on another test`, async () => {
    const seen = { marked: 0, notes: 0, changed: 0 };
    const sequence = fc.array(step, { minLength: 2, maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(table, sequence, async (rows, steps) => {
        excel.workbook = new WorkbookModel();
        excel.workbook.front.grid = [...rows];
        excel.workbook.front.formats.push({
          ...{ id: excel.workbook.newId(), type: "Custom", fill: "#00aa55", ink: "#000000" },
          ...{ areas: [{ top: 1, left: 1, bottom: 4, right: 2 }], formula: "=B2>5" },
        });
        const { store, commands } = openPane(live);
        const pair = new Pair(excel);
        const undone = steps.some(({ kind }) => kind === "undo");
        await commands.check();
        for (const one of steps) {
          if (undone && one.kind !== "undo") pair.remember();
          if (one.kind === "user" || one.kind === "undo") {
            if (one.kind === "user") one.act(pair);
            else pair.undo();
            if (live) await commands.checkAgain();
            continue;
          }
          if (one.between) excel.interrupt(one.between.call, () => void one.between!.act(pair));
          await commands[one.kind]();
          const undisturbed = one.between === undefined || excel.takeBackInterruptions() > 0;
          const { error } = store.get();
          if (error !== "") seen.changed += 1;
          if (one.kind === "mark" && error === "" && undisturbed) {
            const now = fillsOnSheet();
            expect(now).toEqual(expectedFills(store.get().checked!.read));
            seen.marked += now.size;
            seen.notes += excel.workbook.sheet(0).notes.length;
          }
        }
        store.set({ live: false });
        await excelHost().unmark();
        expectSame(excel.workbook.snapshot(), pair.twin.snapshot());
      }),
      { numRuns: SEQUENCES, seed: SEED },
    );
    // The sequences do come to marks and notes, and to tables that cannot be read any more.
    expect(seen.marked).toBeGreaterThan(SEQUENCES / 2);
    expect(seen.notes).toBeGreaterThan(SEQUENCES / 4);
    expect(seen.changed).toBeGreaterThan(0);
  }, 3_600_000);
}
