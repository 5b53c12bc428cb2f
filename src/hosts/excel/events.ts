import { firstCellOf } from "../cell-address";
import type { CellsMoved } from "../cells-moved";
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
  listener: (sheetId: string, moved?: CellsMoved) => void,
  own: OwnEdits,
): Promise<StopListening> {
  const tell = async (event: EditEvent): Promise<void> => {
    if (!own.caused(event)) listener(event.worksheetId, cellsMovedBy(event));
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

const MOVES: Readonly<Record<string, { readonly axis: "row" | "column"; readonly sign: 1 | -1 }>> =
  {
    RowInserted: { axis: "row", sign: 1 },
    RowDeleted: { axis: "row", sign: -1 },
    ColumnInserted: { axis: "column", sign: 1 },
    ColumnDeleted: { axis: "column", sign: -1 },
  };

/** Excel gives the rows or columns that were put in or taken out as an address, such as "4:6", "B:B". */
function cellsMovedBy({ changeType = "", address }: EditEvent): CellsMoved | undefined {
  const how = MOVES[changeType];
  if (!how) return undefined;
  const { axis, sign } = how;
  const [first = "", last = first] = address.split(":");
  const at = firstCellOf(first)[axis];
  return { axis, at, count: sign * (firstCellOf(last)[axis] - at + 1) };
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
