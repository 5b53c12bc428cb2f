import { limitsInLine } from "./limits-in-a-line";
import type { SheetReading } from "./sheet-reading";
import { withSaidOnce } from "./with-said-once";

/** The limits of a table that stand in the header of its reported air, "Air, 4.5-7.5 %", hold for every test. */
export function withLimitsInHeader(read: SheetReading, headerRow: number): SheetReading {
  const { air } = read.columns;
  const value = air && limitsInLine(air.header);
  // From 0 on a scale is read.
  if (!air || !value || value.low === 0) return read;
  const { header, index } = air;
  const place = { row: headerRow, column: index };
  const said = {
    field: "target",
    header,
    place,
    cell: header,
    value,
    column: { ...air, index: -1 },
  };
  return withSaidOnce(read, { said: [{ ...said, field: "target" }], open: [] });
}
