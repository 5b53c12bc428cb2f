import type { CellValue } from "../../../src/measure/cell-value";
import { checkAreaInSteps, type CheckedArea } from "../../../src/pane/state/checked-area";

/** Cells of a sheet as the pane checks them, at a known time. */
export function checkedSheet(values: readonly (readonly CellValue[])[], top = 0): CheckedArea {
  const width = Math.max(...values.map((row) => row.length));
  const whole = values.map((row) => [...row, ...Array<null>(width - row.length).fill(null)]);
  const area = { sheetId: "1", sheetName: "Loads", row: top, column: 0 };
  const read = {
    area: { ...area, rows: whole.length, columns: width },
    address: `Loads!A${top + 1}:R${top + whole.length}`,
    values: whole,
  };
  const steps = checkAreaInSteps(read, { low: "", high: "", decimal: "." });
  for (;;) {
    const step = steps.next();
    if (step.done) return { ...step.value, at: new Date(2026, 5, 10, 14, 5) };
  }
}
