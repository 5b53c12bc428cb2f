/**
 * Lets LibreOffice judge the functions: `npm run verify:libreoffice`.
 *
 * It calculates the ordinary formulas of the verification workbook anew and compares them with the
 * results of our functions, which it does not know and gets as values. Where LibreOffice is not
 * installed, a sentence says so and nothing is judged.
 */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readWorkbook } from "../src/files/workbook/read-workbook";
import { libreOffice, savedByLibreOffice } from "./libreoffice";
import type { SampleSheet } from "./samples/sheet";
import { DIFFERS, verificationSheets } from "./samples/verification/sheets";
import { xlsxOf } from "./write-workbook";

interface Judged {
  readonly name: string;
  readonly verdict: string;
  readonly differing: readonly string[];
}

/** Our functions as values, for a program that does not know them. */
function asValues(sheet: SampleSheet): SampleSheet {
  const rows = sheet.rows.map((row) =>
    row.map((cell) => (cell?.f?.includes("FRESH.") ? { v: cell.v } : cell)),
  );
  return { ...sheet, rows };
}

async function judgedBy(soffice: string, folder: string): Promise<Judged[]> {
  const given = join(folder, "given.xlsx");
  writeFileSync(given, await xlsxOf("Verification", verificationSheets().map(asValues)));
  const { sheets } = await readWorkbook(savedByLibreOffice(soffice, given, folder, true));
  return sheets.map(({ name, rows, cells }) => {
    const shown = (row: number, column: number) =>
      cells?.get(`${row},${column}`)?.formulaResult ?? rows[row]?.[column] ?? "";
    const differing = rows
      .map((row, r) => row.map((_, column) => shown(r, column)))
      .filter((row) => row.some((cell) => cell === DIFFERS || String(cell).startsWith("#")))
      .map((row) => `\n  ${row.join(" | ")}`);
    return { name, verdict: String(shown(0, 0)), differing };
  });
}

async function verify(): Promise<void> {
  const soffice = libreOffice();
  if (!soffice) {
    console.log("LibreOffice is not installed here, so nothing was judged by it.");
    return;
  }
  const folder = mkdtempSync(join(tmpdir(), "verification-"));
  try {
    for (const { name, verdict, differing } of await judgedBy(soffice, folder)) {
      console.log(`LibreOffice, ${name}: ${verdict}${differing.join("")}`);
      if (!/^(\d+) of \1 match$/.test(verdict)) process.exitCode = 1;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

void verify();
