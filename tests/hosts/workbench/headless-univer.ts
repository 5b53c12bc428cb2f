import { buildSync } from "esbuild";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The spreadsheet of the workbench without its pages: what it computes, marks and remembers. */
const PARTS = `
export * from "@univerjs/core";
export { FUniver } from "@univerjs/core/facade";
export { FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
export { UniverSheetsPlugin } from "@univerjs/sheets";
export { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
export { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
export { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import "@univerjs/sheets/lib/es/facade.js";
import "@univerjs/engine-formula/lib/es/facade.js";
import "@univerjs/sheets-formula/lib/es/facade.js";
import "@univerjs/sheets-conditional-formatting/lib/es/facade.js";
import "@univerjs/sheets-note/lib/es/facade.js";
`;

/**
 * Loads the spreadsheet's library in Node. Its packages mix kinds of modules that Node and jest do
 * not load together, so they are put into one file first.
 */
export function loadHeadlessUniver(): Record<string, any> {
  const outfile = join(mkdtempSync(join(tmpdir(), "univer-")), "univer.cjs");
  buildSync({
    stdin: { contents: PARTS, resolveDir: process.cwd() },
    outfile,
    bundle: true,
    platform: "node",
    format: "cjs",
    mainFields: ["module", "main"],
    conditions: ["import"],
    logLevel: "error",
  });
  return require(outfile) as Record<string, any>;
}
