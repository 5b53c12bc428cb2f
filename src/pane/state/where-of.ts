import type { Finding } from "../../fieldsheet/finding";
import { blockAddress } from "../../hosts/cell-address";
import { say } from "../../messages/pane-catalogue";
import { placeOf, type CheckedArea } from "./checked-area";

/** "C7" for a cell, "row 7" for a row as a whole, "whole sheet" for the sheet. */
export function whereOf(finding: Finding, checked: CheckedArea): string {
  const { record, column: ofColumn, place: standsAt } = finding;
  if (record === null && ofColumn === undefined && standsAt === undefined)
    return say("pane-whole-sheet");
  const place = placeOf(checked, finding);
  const { field, column } = finding;
  if (
    column === undefined &&
    finding.place === undefined &&
    (field === null || !checked.result.reading.has(field))
  )
    return say("pane-row", { row: place.row + 1 });
  return blockAddress({ ...place, rows: 1, columns: 1 });
}
