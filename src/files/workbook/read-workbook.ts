import { readXlsx } from "hucre/xlsx";
import { Problem } from "../../measure/problem";
import { OpenedPackage } from "../package/opened-package";
import { storedPackage } from "../package/write-package";
import { blockOf, blockReference, cellsIn } from "./cell-reference";
import { usedCells, type UsedCells } from "./used-cells";
import { workbookParts, type SheetPart } from "./workbook-parts";

/** The library that reads workbooks of other programs stays behind this module. */
export type FileWorkbook = Awaited<ReturnType<typeof readXlsx>>;
export type FileSheet = FileWorkbook["sheets"][number];
export type FileCell = NonNullable<FileSheet["cells"]> extends Map<string, infer C> ? C : never;

/** Cells of all sheets together: what a reader can hold. */
const MOST_CELLS = 6_000_000;
/** A sheet that reaches over so many cells and fills hardly any of them reaches too far. */
const LARGE_REACH = 3_000_000;
const LEAST_FILLED = 0.02;
/** What a reader of cells has no use for. */
const NOT_READ =
  /^(?:docProps|customXml)\/|\/(?:media|charts|embeddings|externalLinks|pivotCache|pivotTables|slicers|slicerCaches|timelines|ctrlProps|activeX|printerSettings)\/|\/drawings\/[^/]*\.xml|vbaProject/;

/**
 * Reads a workbook with its formulas and formats. What it claims is looked at before anything is built
 * from it.
 *
 * @param file The package, or its bytes.
 * @param withStyles Whether formats are wanted; dates are told from numbers either way.
 * @throws Problem `file-damaged`, `file-claims-too-much`, `file-too-many-cells`.
 */
export async function readWorkbook(
  file: OpenedPackage | Uint8Array,
  withStyles = true,
): Promise<FileWorkbook> {
  const opened = file instanceof Uint8Array ? new OpenedPackage(file) : file;
  const sheets = (await workbookParts(opened)).sheets.filter((each) => each.cells);
  const parts = new Map<string, Uint8Array>();
  for (const name of opened.names())
    if (!NOT_READ.test(name)) parts.set(name, await opened.content(name));
  let cells = 0;
  for (const sheet of sheets) {
    const part = parts.get(sheet.part)!;
    const used = usedCells(part);
    refuseClaims(sheet, used);
    cells += Math.max(used.filled, reach(used));
    parts.set(sheet.part, withoutBlankRows(part, used));
  }
  if (cells > MOST_CELLS) throw new Problem("file-too-many-cells", { cells, most: MOST_CELLS });
  try {
    return await readXlsx(storedPackage(parts), {
      readStyles: withStyles,
      // A chart on a sheet of its own has no cells to read.
      sheets: sheets.map(({ name }) => name),
    });
  } catch {
    throw new Problem("file-damaged");
  }
}

/** Cells of the rectangle that a reader must build. */
function reach({ lastRow, lastColumn, lastFormatted }: UsedCells): number {
  return (lastRow + 1) * (Math.max(lastColumn, lastFormatted) + 1);
}

function refuseClaims({ name }: SheetPart, used: UsedCells): void {
  const { filled, lastRow, lastColumn, lastFormatted, spread } = used;
  const claims = (range: string) => new Problem("file-claims-too-much", { sheet: name, range });
  const far = spread.find((range) => {
    const block = blockOf(range);
    return !block || cellsIn(block) > LARGE_REACH;
  });
  if (far) throw claims(far);
  const cells = reach(used);
  if (cells > LARGE_REACH && filled < cells * LEAST_FILLED) {
    const right = Math.max(lastColumn, lastFormatted);
    throw claims(blockReference({ top: 0, left: 0, bottom: lastRow, right }));
  }
}

function withoutBlankRows(part: Uint8Array, { blankRows: [from, to] }: UsedCells): Uint8Array {
  if (from === to) return part;
  const shorter = new Uint8Array(part.length - (to - from));
  shorter.set(part.subarray(0, from));
  shorter.set(part.subarray(to), from);
  return shorter;
}
