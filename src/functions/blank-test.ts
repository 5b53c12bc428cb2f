import { cellValueFrom, quoted } from "../measure/cell-value";
import { at, issue, type Issue } from "../measure/issue";
import { blankCells } from "./runner/blank-cells";
import { orThrow } from "./runner/cell-error";

/**
 * Shows how this spreadsheet hands over blank cells to functions: "blank" as it should be, or "zero" where it makes a 0 of them, as some Excels do. Point it at cells that are blank. From then on the other functions know.
 * @customfunction BLANK.TEST BLANK.TEST
 * @param cells One or several blank cells.
 * @returns "blank" or "zero".
 * @example =FRESH.BLANK.TEST(0) gives "zero" [what it says of a blank cell that comes as 0]
 * @example =FRESH.BLANK.TEST({5.5}) gives #VALUE! [point to a cell that is blank]
 */
export function blankTest(cells: any[][]): any[][] {
  return [[orThrow(at("cells", cameAs(cells)))]];
}

function cameAs(cells: unknown): "blank" | "zero" | Issue {
  const held = Array.isArray(cells) ? (cells as unknown[]).flat() : [];
  if (held.length === 0) return issue("argument-missing");
  const came = held.every((cell) => cell === null) ? "blank" : "zero";
  const other = held.find((cell) => cell !== (came === "blank" ? null : 0));
  if (other !== undefined) {
    return issue("not-a-blank-cell", { value: quoted(cellValueFrom(other)) });
  }
  blankCells().saw(came);
  return came;
}
