import { calculated, worksheetFunctions } from "../../tests/samples/workbench-engine";
import type { SampleSheet } from "../samples/sheet";
import { median } from "./in-turn";

const ROWS = 10_000;

/** The correction as people write it in a cell: by rows of the table, half up. */
const PLAIN = (row: number) =>
  `=ROUND((A${row}-IF(C${row}<40,0,IF(C${row}<=48,0.3,IF(C${row}<=64,0.6,0.9)))+B${row})*4,0)/4`;
const OURS = (row: number) => `=FRESH.AIR(A${row},B${row},C${row},"oz")`;

/**
 * Our function in 10,000 cells of the workbench's spreadsheet ÷ a plain formula in as many, without what
 * a sheet with next to none takes.
 */
export async function gridRatio(rounds = 3): Promise<number> {
  const time = async (formula: FormulaOfRow) => {
    const start = performance.now();
    await calculated([sheetOf(formula)], worksheetFunctions);
    return performance.now() - start;
  };
  await time(OURS);
  const ratios: number[] = [];
  for (let i = 0; i < rounds; i++) {
    const empty = await time(() => undefined);
    ratios.push(((await time(OURS)) - empty) / ((await time(PLAIN)) - empty));
  }
  return median(ratios);
}

type FormulaOfRow = (row: number) => string | undefined;

/** Something is calculated on every sheet: without a formula the spreadsheet never says that it is done. */
function sheetOf(formula: FormulaOfRow): SampleSheet {
  const rows = Array.from({ length: ROWS }, (_, i) => [
    { v: 5.5 + (i % 5) / 4 },
    { v: i % 2 },
    { v: 40 + 8 * (i % 4) },
    { v: 0, f: formula(i + 1) ?? (i === 0 ? "=1+1" : undefined) },
  ]);
  return { name: "Air", columns: [], headerRows: 0, wrapped: [], rows };
}
