import { isBlank, isCellError, shownValue, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import type { Considered } from "./considered";
import type { FieldId } from "./fields";
import type { SheetColumn } from "./recognition";

/** Below what is read: asked about. */
const ASKED = 52;
const NAMES_ANOTHER: ReadonlySet<FieldId> = new Set<FieldId>(["checkOf", "repeatOf"]);
const NAMES_A_TEST: ReadonlySet<FieldId> = new Set<FieldId>(["sample", "load"]);

/**
 * What a test checks or repeats is named as that test is. "Check" alone over ticks, initials or what a formula
 * gives names none of them, and is asked about at most.
 */
export function namesOfOtherTests(
  considered: readonly Considered[],
  columns: readonly SheetColumn[],
): readonly Considered[] {
  const may = ({ kept, told, candidates }: Considered) =>
    !kept &&
    told.own.words.length === 1 &&
    candidates.some(({ field }) => NAMES_ANOTHER.has(field));
  if (!considered.some(may)) return considered;
  const names = new Set(
    considered.flatMap(({ candidates }, at) =>
      candidates.some(({ field }) => NAMES_A_TEST.has(field))
        ? columns[at]!.cells.flatMap(nameIn)
        : [],
    ),
  );
  return considered.map((column, at) => {
    const { cells } = columns[at]!;
    const isFilled = cells.some((cell) => !isBlank(cell));
    if (
      !may(column) ||
      !isFilled ||
      cells.some((cell) => nameIn(cell).some((name) => names.has(name)))
    )
      return column;
    const candidates = column.candidates.map((candidate) =>
      NAMES_ANOTHER.has(candidate.field)
        ? { ...candidate, score: Math.min(candidate.score, ASKED) }
        : candidate,
    );
    return { ...column, candidates: candidates.sort((a, b) => b.score - a.score) };
  });
}

function nameIn(cell: CellValue): string[] {
  return isBlank(cell) || isCellError(cell) ? [] : [folded(shownValue(cell)).trim()];
}
