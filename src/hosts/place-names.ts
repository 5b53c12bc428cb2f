import { areaAddress } from "./cell-address";
import { say } from "../messages/pane-catalogue";

/** So many places are named in a sentence. */
const MOST_NAMED = 6;

/** Cells of a sheet as a sentence names them: "Loads!B3, Loads!B7 and 12 more". */
export function placeNames(
  sheetName: string,
  cells: readonly { readonly row: number; readonly column: number }[],
): string {
  const named = cells
    .slice(0, MOST_NAMED)
    .map((cell) => areaAddress({ sheetId: "", sheetName, ...cell, rows: 1, columns: 1 }))
    .join(", ");
  const more = cells.length - MOST_NAMED;
  return more > 0 ? say("places-and-more", { named, more }) : named;
}
