/** Writes the workbook that judges itself: `npm run verification`. */
import { writeFileSync } from "node:fs";
import { calculated } from "./samples/verification/headless-spreadsheet";
import { verificationSheets } from "./samples/verification/sheets";
import { xlsxOf } from "./write-workbook";

/** Where the workbook is kept. */
export const VERIFICATION = "samples/verification.xlsx";

async function makeVerification(): Promise<void> {
  const sheets = await calculated(verificationSheets());
  writeFileSync(VERIFICATION, await xlsxOf("Functions beside ordinary formulas", sheets));
  for (const { name, rows } of sheets) console.log(`${VERIFICATION}, ${name}: ${rows[0]![0]!.v}`);
}

void makeVerification();
