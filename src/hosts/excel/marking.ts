import { WEIGHTS } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { blockAddress } from "../cell-address";
import { MARK_STYLES } from "../mark-style";
import { markFormula, noteText } from "../mark-tag";
import { addressesOf, markedCellsBySheet, type MarkedCell } from "../marked-cells";
import type { Mark, MarkReport } from "../sheet-host";
import { excelCan } from "./abilities";
import { inExcel } from "./in-excel";
import { notedCells, placeKey, takenPlaces, type NotePlaces } from "./note-places";
import { findOurMarks, takeOff } from "./our-marks";
import { stateOfSheets, type SheetState } from "./sheet-state";

/** Excel cuts addresses off at 8,192 characters. */
const LONGEST_ADDRESS = 8_000;
/** More notes than these make a sheet slow. */
const MOST_NOTES = 1_000;

/** What putting marks on a sheet came to. */
type SheetReport = Partial<MarkReport>;

/** Marks cells in place of all earlier marks of ours on their sheets. */
export async function putMarks(
  marks: readonly Mark[],
  withNotes: boolean,
  sheetId?: string,
): Promise<MarkReport> {
  const bySheet = [...markedCellsBySheet(marks, sheetId)];
  if (bySheet.length === 0) return totalOf([]);
  return inExcel(async (context) => {
    const sheets = bySheet.map(([id]) => context.workbook.worksheets.getItem(id));
    const forNotes = withNotes && excelCan("notes");
    const states = await stateOfSheets(context, sheets, forNotes);
    const earlier = await findOurMarks(context, states);
    takeOff(states, earlier);
    const reports = states.flatMap((state, i) => {
      const cells = bySheet[i]?.[1] ?? [];
      const places = earlier.places[i];
      return [putFormats(state, cells), forNotes && places ? putNotes(state, cells, places) : {}];
    });
    if (withNotes && !forNotes) reports.push({ remarks: [say("notes-need-newer-excel")] });
    await context.sync();
    return totalOf(reports);
  });
}

/**
 * One conditional format a weight. Where the cells do not fit into one address, because Excel would cut
 * it off, further ones with the same tag follow.
 */
function putFormats(state: SheetState, cells: readonly MarkedCell[]): SheetReport {
  if (!state.takesFormats) {
    return { remarks: [say("marks-not-on-protected-sheet", { sheet: state.name })] };
  }
  for (const weight of WEIGHTS) {
    const ofWeight = cells.filter((cell) => cell.weight === weight);
    for (const address of addressesOf(ofWeight, LONGEST_ADDRESS)) {
      const { custom } = state.sheet
        .getRanges(address)
        .conditionalFormats.add(Excel.ConditionalFormatType.custom);
      custom.rule.formula = markFormula(weight);
      custom.format.fill.color = MARK_STYLES[weight].fill;
      custom.format.font.color = MARK_STYLES[weight].ink;
    }
  }
  return { cells: cells.length };
}

/** A note for each cell that carries none of the user's. */
function putNotes(
  state: SheetState,
  cells: readonly MarkedCell[],
  places: NotePlaces,
): SheetReport {
  if (!state.takesNotes) {
    return { remarks: [say("notes-not-on-protected-sheet", { sheet: state.name })] };
  }
  const taken = takenPlaces(places);
  const noted = notedCells(cells, places);
  const free = noted.filter((cell) => !taken.has(placeKey(cell)));
  const first = free.slice(0, MOST_NOTES);
  for (const { row, column, sentences } of first) {
    const address = blockAddress({ row, column, rows: 1, columns: 1 });
    state.sheet.notes.add(address, noteText(sentences));
  }
  const kept = noted.length - free.length;
  const remarks = [
    ...(kept > 0 ? [say("notes-kept", { count: kept })] : []),
    ...(free.length > first.length ? [say("notes-only-first", { count: first.length })] : []),
  ];
  return { notes: first.length, remarks };
}

/** Takes every mark of ours off the whole workbook. */
export async function removeMarks(): Promise<MarkReport> {
  return inExcel(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id");
    await context.sync();
    const states = await stateOfSheets(context, worksheets.items, false);
    const ours = await findOurMarks(context, states, askCells);
    takeOff(states, ours);
    await context.sync();
    return totalOf([
      ...ours.asked.map(({ cellCount }) => ({ cells: cellCount })),
      ...ours.places.map((places) => ({ notes: places.ours.length })),
      ...states
        .filter(({ takesFormats }) => !takesFormats)
        .map(({ name }) => ({ remarks: [say("marks-left-on-protected-sheet", { sheet: name })] })),
    ]);
  });
}

function askCells(format: Excel.ConditionalFormat): Excel.RangeAreas {
  const areas = format.getRanges();
  areas.load("cellCount");
  return areas;
}

function totalOf(reports: readonly SheetReport[]): MarkReport {
  return {
    cells: reports.reduce((sum, { cells = 0 }) => sum + cells, 0),
    notes: reports.reduce((sum, { notes = 0 }) => sum + notes, 0),
    remarks: reports.flatMap(({ remarks = [] }) => remarks),
  };
}
