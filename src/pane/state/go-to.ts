import type { Finding } from "../../fieldsheet/finding";
import { sameRow } from "../../hosts/same-values";
import type { CellPlace, SheetHost } from "../../hosts/sheet-host";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { placeOf, type CheckedArea } from "./checked-area";
import { whereRowIs } from "./where-row-is";

/**
 * Leads to the cell of a finding, wherever its row stands by now.
 *
 * @returns What is to be said where it does not stand any more where it was checked; "" else.
 * @throws Problem `pane-test-gone`, and those of the host.
 */
export async function goTo(
  host: SheetHost,
  checked: CheckedArea,
  at: Pick<Finding, "record" | "field" | "column" | "place">,
): Promise<string> {
  const { area, values } = checked.read;
  const place = placeOf(checked, at);
  const cells = values[place.row - area.row]!;
  const stands = { ...area, row: place.row, rows: 1, columns: cells.length };
  const [now] = await host.select(place, stands);
  return sameRow(now!, cells) ? "" : goToMoved(host, checked, at, place);
}

/** Leads to what does not stand any more where it was checked. */
async function goToMoved(
  host: SheetHost,
  { read, result, headerRow }: CheckedArea,
  at: Pick<Finding, "record" | "field" | "column" | "place">,
  place: CellPlace,
): Promise<string> {
  const now = await host.readAgain(read);
  const { sample, load } = result.columns;
  // In forms a row of the sheet has no name of its own.
  const id = result.reading.forms === undefined ? (sample ?? load)?.index : undefined;
  const checkedRow = { row: place.row - read.area.row, headerRow, id };
  const found = whereRowIs(read, checkedRow, now);
  const values = {
    row: place.row + 1,
    sample: at.record === null ? "" : result.results[at.record]!.sample,
  };
  if (!found) throw new Problem("pane-test-gone", values);
  const { sheetId, row: top, column: left } = now.area;
  const column = left + (found.columns[place.column - read.area.column] ?? 0);
  const row = top + found.row;
  await host.select({ sheetId, row, column });
  const said = found.unchanged ? "pane-test-moved" : "pane-test-edited";
  return say(said, { ...values, now: row + 1 });
}
