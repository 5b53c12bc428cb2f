import { IUndoRedoService } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { openWorkbook } from "./workbook";

/**
 * From here on all that is done is one step of Undo.
 *
 * @returns Ends the step; what a user does from then on is a step of its own.
 */
export function beginUndoStep(api: FUniver): () => void {
  const workbook = openWorkbook(api);
  const undo = workbook.getActiveSheet().getInject().get(IUndoRedoService);
  const step = undo.__tempBatchingUndoRedo(workbook.getId());
  return () => step.dispose();
}
