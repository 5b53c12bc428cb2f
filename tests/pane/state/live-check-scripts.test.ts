import fc from "fast-check";
import type { CellValue } from "../../../src/measure/cell-value";
import { placeOf } from "../../../src/pane/state/checked-area";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore, type PaneStore } from "../../../src/pane/state/pane-state";
import { fakeHost, HEADER } from "../fake-host";

jest.setTimeout(30_000);

type Edit = (cells: CellValue[][]) => void;

const cell = fc.constantFrom<CellValue>(null, 6, 6.25, 6.5, 7, 16, 48, "six", "n/a", -1, 12);
const row = fc.tuple(fc.constantFrom("S-1", "S-2", "S-3"), cell, cell, cell, cell);
const at = fc.nat(30);
/** A row of the table below its header. */
const bodyRow = (cells: CellValue[][], number: number) => 1 + (number % (cells.length - 1));

const edit = fc.oneof(
  fc
    .tuple(at, fc.integer({ min: 1, max: 4 }), cell)
    .map(([number, column, value]): Edit => (cells) => {
      cells[bodyRow(cells, number)]![column] = value;
    }),
  fc.tuple(at, row).map(
    ([number, added]): Edit =>
      (cells) =>
        cells.splice(bodyRow(cells, number), 0, added),
  ),
  fc.tuple(at, row).map(
    ([number, pasted]): Edit =>
      (cells) =>
        cells.splice(bodyRow(cells, number), 1, pasted),
  ),
  row.map(
    (added): Edit =>
      (cells) =>
        cells.push(added),
  ),
  at.map((number): Edit => (cells) => {
    if (cells.length > 2) cells.splice(bodyRow(cells, number), 1);
  }),
  fc.constant<Edit>((cells) => {
    const body = cells.splice(1);
    cells.push(...body.sort((a, b) => String(a[1]).localeCompare(String(b[1]))));
  }),
);

const seen = (store: PaneStore) => {
  const { checked, error } = store.get();
  if (error || !checked) return error;
  const { findings } = checked.result;
  return findings.map(({ rule, say, values, ...at }) => [rule, say, values, placeOf(checked, at)]);
};

test("whatever is typed, pasted, sorted, inserted or deleted, the live check ends where a full one does", async () => {
  const scripts = fc.asyncProperty(
    fc.array(row, { minLength: 1, maxLength: 8 }),
    fc.array(edit, { minLength: 1, maxLength: 5 }),
    async (rows, edits) => {
      const cells: CellValue[][] = [HEADER, ...rows.map((each) => [...each])];
      const { host } = fakeHost(cells);
      const live = createPaneStore();
      const full = createPaneStore();
      const liveCommands = paneCommands(live, host);
      await liveCommands.check();
      for (const change of edits) {
        change(cells);
        await liveCommands.checkAgain();
      }
      await paneCommands(full, host).check();
      expect(seen(live)).toEqual(seen(full));
    },
  );
  await fc.assert(scripts, { numRuns: 500 });
});
