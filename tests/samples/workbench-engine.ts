/** The workbench's spreadsheet with the worksheet functions, in one file: see bundled-engine.ts. */
import { FUNCTIONS } from "../../scripts/samples/formula";
import type { AddedFunction } from "../../scripts/samples/verification/headless-spreadsheet";
import { ErrorSentences } from "../../src/workbench/functions/error-sentences";
import { worksheetFunction } from "../../src/workbench/functions/worksheet-function";
import recorded from "../functions/functions-record.json";

export { calculated } from "../../scripts/samples/verification/headless-spreadsheet";

/** Where the functions say why a cell shows an error. */
export const sentences = new ErrorSentences();

/** The worksheet functions as the workbench adds them to its spreadsheet. */
export const worksheetFunctions: readonly AddedFunction[] = recorded.map(({ id, parameters }) => {
  const declaration = {
    id,
    name: id,
    description: "",
    parameters: parameters.map((name) => ({
      name,
      description: "",
      optional: name.includes("?"),
      repeating: false,
    })),
  };
  const implementation = FUNCTIONS[id as keyof typeof FUNCTIONS] as (
    ...given: unknown[]
  ) => unknown;
  return [worksheetFunction({ declaration, implementation }, sentences), `FRESH.${id}`];
});
