/** What a test needs of the workbench's spreadsheet, in one file: see bundled-engine.ts. */
export { calculated } from "../../scripts/samples/verification/headless-spreadsheet";
export { ErrorSentences } from "../../src/workbench/functions/error-sentences";
export { worksheetFunction } from "../../src/workbench/functions/worksheet-function";
