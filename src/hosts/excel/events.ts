import { firstCellOf } from "../cell-address";
import type { CellPlace, StopListening } from "../sheet-host";
import { excelCan } from "./abilities";
import { inExcel } from "./in-excel";
import type { OwnEdits } from "./own-edits";

/** Tells of each newly selected cell; of a larger selection its first cell. */
export function onSelection(listener: (place: CellPlace) => void): Promise<StopListening> {
  return inExcel(async (context) => {
    const handler = context.workbook.worksheets.onSelectionChanged.add(
      async ({ worksheetId, address }) =>
        listener({ sheetId: worksheetId, ...firstCellOf(address) }),
    );
    await context.sync();
    return stopping([handler]);
  });
}

/** Tells of changes of cells, rows and columns, also by sorting; not of those we caused. */
export function onEditOfOthers(
  listener: (sheetId: string) => void,
  own: OwnEdits,
): Promise<StopListening> {
  const tell = async (event: { worksheetId: string; triggerSource?: string }): Promise<void> => {
    if (!own.caused(event)) listener(event.worksheetId);
  };
  return inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const handlers: Handler[] = [worksheets.onChanged.add(tell)];
    if (excelCan("sortEvents")) {
      handlers.push(worksheets.onRowSorted.add(tell), worksheets.onColumnSorted.add(tell));
    }
    await context.sync();
    return stopping(handlers);
  });
}

type Handler = Pick<OfficeExtension.EventHandlerResult<unknown>, "context" | "remove">;

/** Handlers are taken off in the context in which they were put on. */
function stopping(handlers: readonly Handler[]): StopListening {
  return async () => {
    const [first] = handlers;
    if (!first) return;
    try {
      await Excel.run(first.context, async (context) => {
        for (const handler of handlers) handler.remove();
        await context.sync();
      });
    } catch {
      // The sheet or the workbook has gone, and the handlers with it.
      return;
    }
  };
}
