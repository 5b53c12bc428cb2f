import { firstCellOf } from "../cell-address";
import type { RowsMoved } from "../rows-moved";
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
  listener: (sheetId: string, moved?: RowsMoved) => void,
  own: OwnEdits,
): Promise<StopListening> {
  const tell = async (event: EditEvent): Promise<void> => {
    if (!own.caused(event)) listener(event.worksheetId, rowsMovedBy(event));
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

/** What the events of edits and of sorting have in common. */
interface EditEvent {
  readonly worksheetId: string;
  readonly address: string;
  readonly changeType?: string;
  readonly triggerSource?: string;
}

/** Excel gives the rows that were put in or taken out as an address, such as "4:6". */
function rowsMovedBy({ changeType, address }: EditEvent): RowsMoved | undefined {
  if (changeType !== "RowInserted" && changeType !== "RowDeleted") return undefined;
  const [first = "", last = first] = address.split(":");
  const at = firstCellOf(first).row;
  const count = firstCellOf(last).row - at + 1;
  return { at, count: changeType === "RowInserted" ? count : -count };
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
