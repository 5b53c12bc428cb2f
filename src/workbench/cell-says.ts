import type { FUniver } from "@univerjs/core/facade";
import { columnLetters } from "../hosts/cell-address";
import { listenToSelection } from "../hosts/workbench/listening";
import { SheetCells } from "../hosts/workbench/sheet-cells";
import { isCellError } from "../measure/cell-value";
import { workbenchMessages } from "../messages/english/workbench";
import { say } from "../messages/pane-catalogue";
import type { ErrorSentences } from "./functions/error-sentences";

/** What moves formulas to other cells, so that kept sentences no longer fit their place. */
const MOVES_FORMULAS = /^sheet\.mutation\.(insert|remove|move|reorder|delete)-/;

/**
 * Shows under the grid why the selected cell holds an error, as Excel does on the cell's card.
 *
 * @param line The element for the sentence.
 * @returns Stops it.
 */
export function showWhatCellsSay(
  api: FUniver,
  sentences: ErrorSentences,
  line: HTMLElement,
): () => void {
  const show = () => {
    const sheet = api.getActiveWorkbook()?.getActiveSheet();
    const cell = sheet?.getActiveCell();
    const place = cell && {
      sheetId: cell.getSheetId(),
      row: cell.getRow(),
      column: cell.getColumn(),
    };
    const content = sheet && place ? new SheetCells(sheet).at(place.row, place.column) : null;
    const error = isCellError(content) ? content.error : undefined;
    const sentence = error && place && (sentences.about(place) ?? sentenceFor(error));
    line.classList.toggle("is-error", Boolean(sentence));
    if (!sentence || !place) {
      line.textContent = say("cell-says-hint");
      return;
    }
    const name = document.createElement("span");
    name.className = "says-cell";
    name.textContent = `${columnLetters(place.column)}${place.row + 1} ${error}`;
    line.replaceChildren(name, " ", sentence);
  };
  show();
  const stopFollowing = listenToSelection(api, show);
  const listening = [
    api.getFormula().calculationResultApplied(show),
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (!MOVES_FORMULAS.test(id)) return;
      sentences.clear();
      api.getFormula().executeCalculation();
    }),
  ];
  return () => {
    stopFollowing();
    listening.forEach((each) => each.dispose());
  };
}

/** What an error means, where no function of ours has said more. */
function sentenceFor(error: string): string {
  const id = `cell-error-${error}`;
  return id in workbenchMessages
    ? say(id as keyof typeof workbenchMessages & `cell-error-${string}`)
    : say("cell-error", { error });
}
