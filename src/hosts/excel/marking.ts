import { WEIGHTS } from "../../fieldsheet/finding";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { blockAddress } from "../cell-address";
import { totalOf } from "../mark-report";
import { MARK_STYLES } from "../mark-style";
import { markFormula } from "../mark-tag";
import { inSlices, type Pause } from "../in-slices";
import { addressesOf, markedCellsInSteps, type MarkedCell } from "../marked-cells";
import { noteText } from "../our-note";
import type { Mark, MarkReport, ReadArea } from "../sheet-host";
import { excelCan } from "./abilities";
import { askWhetherUnchanged } from "./checked-cells";
import { blockAround, hiddenCells } from "./hidden-cells";
import { asOneStep } from "./in-excel";
import { leftBehind } from "./left-behind";
import { notedCells, placeKey, takenPlaces, type NotePlaces } from "./note-places";
import { ourFormats } from "./our-formats";
import { findOurMarks, takeOff } from "./our-marks";
import { stateOfSheets, type SheetState } from "./sheet-state";

/** Excel cuts addresses off at 8,192 characters. */
const LONGEST_ADDRESS = 8_000;
/** More notes than these make a sheet slow. */
const MOST_NOTES = 1_000;

/** What putting marks on a sheet came to. */
type SheetReport = Partial<MarkReport>;

/**
 * Marks cells in place of all earlier marks of ours on their sheets.
 *
 * @throws Problem `table-changed` where one of the checked tables holds something else by now: then no
 *   mark stays on them.
 */
export async function putMarks(
  marks: readonly Mark[],
  withNotes: boolean,
  checked: readonly ReadArea[] = [],
  pause: Pause = async () => {},
): Promise<MarkReport> {
  // Once Excel is asked there is no way back.
  const bySheet = [...(await inSlices(markedCellsInSteps(marks, checked), pause))];
  await pause();
  if (bySheet.length === 0) return totalOf([]);
  const forNotes = withNotes && excelCan("notes");
  return asOneStep(async (context) => {
    const states = await stateOfSheets(
      context,
      bySheet.map(([id, cells]) => ({
        sheet: context.workbook.worksheets.getItem(id),
        forNotes,
        toMark: blockAround(cells),
      })),
    );
    const earlier = await findOurMarks(context, states);
    const hidden: SheetReport[] = [];
    for (const [i, { toMark }] of states.entries()) {
      hidden.push(hiddenReport(await hiddenCells(context, toMark, bySheet[i]![1])));
    }

    const notes = takeOff(states, earlier);
    const added = states.map((state, i) => putFormats(state, bySheet[i]![1]));
    const reports = states.flatMap((state, i) => {
      const [, cells] = bySheet[i]!;
      const { places } = earlier[i]!;
      return [
        formatsReport(state, cells),
        ...(forNotes ? [putNotes(state, cells, places)] : []),
        leftBehind(state, earlier[i]!),
      ];
    });
    const unchanged = askWhetherUnchanged(context, checked, new Map(bySheet));
    const now = states.map(askFormatsNow);
    await notes.sync(context);

    await takeOffMeanwhile(context, states, added, now);
    if (!unchanged()) {
      await takeAllOff(context, states);
      throw new Problem("table-changed");
    }
    if (withNotes && !forNotes) reports.push({ remarks: [say("notes-need-newer-excel")] });
    return totalOf([...reports, ...hidden]);
  });
}

/**
 * One conditional format a weight. Where the cells do not fit into one address, because Excel would cut
 * it off, further ones with the same tag follow.
 */
function putFormats(
  state: SheetState,
  cells: readonly MarkedCell[],
): readonly Excel.ConditionalFormat[] {
  if (!state.takesFormats) return [];
  return WEIGHTS.flatMap((weight) => {
    const ofWeight = cells.filter((cell) => cell.weight === weight);
    return addressesOf(ofWeight, LONGEST_ADDRESS).map((address) => {
      const format = state.sheet
        .getRanges(address)
        .conditionalFormats.add(Excel.ConditionalFormatType.custom);
      format.load("id");
      const { custom } = format;
      custom.rule.formula = markFormula(weight);
      custom.format.fill.color = MARK_STYLES[weight].fill;
      custom.format.font.color = MARK_STYLES[weight].ink;
      return format;
    });
  });
}

function formatsReport(state: SheetState, cells: readonly MarkedCell[]): SheetReport {
  if (state.takesFormats) return { cells: cells.length };
  return { remarks: [say("marks-not-on-protected-sheet", { sheet: state.name })] };
}

function hiddenReport(hidden: number | undefined): SheetReport {
  if (hidden === 0) return {};
  return {
    remarks: [
      hidden === undefined ? say("marks-perhaps-hidden") : say("marks-hidden", { count: hidden }),
    ],
  };
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

/** Asks, behind the marking in the same request, which formats stand on a sheet by then. */
function askFormatsNow({ sheet }: SheetState): Excel.ConditionalFormatCollection {
  const formats = sheet.getRange().conditionalFormats;
  formats.load("items/id,items/type");
  return formats;
}

/**
 * Takes off what another pane has marked between our look and our marking: of two that mark at once, the
 * marks of the later one stay.
 */
async function takeOffMeanwhile(
  context: Excel.RequestContext,
  states: readonly SheetState[],
  added: readonly (readonly Excel.ConditionalFormat[])[],
  now: readonly Excel.ConditionalFormatCollection[],
): Promise<void> {
  const known = new Set(
    [...states.flatMap(({ formats }) => formats.items), ...added.flat()].map(({ id }) => id),
  );
  const unknown = now.map(({ items }) => items.filter(({ id }) => !known.has(id)));
  if (unknown.every((formats) => formats.length === 0)) return;
  const others = (await ourFormats(context, unknown)).flat();
  for (const format of others) format.delete();
  await context.sync();
}

async function takeAllOff(
  context: Excel.RequestContext,
  states: readonly SheetState[],
): Promise<void> {
  const now = await stateOfSheets(
    context,
    states.map(({ sheet }) => ({ sheet })),
  );
  await takeOff(now, await findOurMarks(context, now)).sync(context);
}
