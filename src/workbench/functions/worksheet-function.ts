import {
  BaseFunction,
  type BaseValueObject,
  type FunctionVariantType,
} from "@univerjs/preset-sheets-core";
import { say } from "../../messages/pane-catalogue";
import { CustomFunctionsError } from "./custom-functions";
import type { Declaration } from "./declaration";
import { offsetKey, type ErrorSentences } from "./error-sentences";
import type { LoadedFunction } from "./load-functions";
import { resultFrom, tableFrom } from "./value-exchange";

/** Before the names of all our functions, as the manifest says it for Excel. */
export const NAMESPACE = "FRESH.";
/** As many arguments as Excel allows. */
const MOST_ARGUMENTS = 255;

/**
 * The class under which the spreadsheet knows a worksheet function. It asks for references instead
 * of values, because only a reference tells a blank from a zero.
 *
 * @param sentences Where the sentences of errors are kept.
 */
export function worksheetFunction(
  { declaration, implementation }: Pick<LoadedFunction, "declaration" | "implementation">,
  sentences: ErrorSentences,
): typeof BaseFunction {
  const name = NAMESPACE + declaration.name;
  return class extends BaseFunction {
    override needsReferenceObject = true;
    override minParams = 0;
    override maxParams = MOST_ARGUMENTS;

    override calculate(...given: FunctionVariantType[]): BaseValueObject {
      const result = resultOrError(() => {
        checkCount(name, declaration, given.length);
        return implementation(...argumentsFor(declaration, given.map(tableFrom)));
      });
      const from = { sheetId: this.subUnitId ?? "", row: this.row, column: this.column };
      sentences.keep(name, from, errorsIn(result));
      return resultFrom(result);
    }
  };
}

/** A function that throws must not stop the calculation of the other cells. */
function resultOrError(compute: () => unknown): unknown {
  try {
    return compute();
  } catch (error) {
    return error instanceof CustomFunctionsError
      ? error
      : new CustomFunctionsError("#VALUE!", say("function-failed"));
  }
}

/** A repeating parameter, the last one, takes all tables that are left as one list. */
function argumentsFor({ parameters }: Declaration, tables: unknown[][][]): unknown[] {
  const repeating = parameters.findIndex((parameter) => parameter.repeating);
  return repeating < 0 ? tables : [...tables.slice(0, repeating), tables.slice(repeating)];
}

/** Excel refuses a formula with a wrong number of arguments; here it is said in the cell. */
function checkCount(name: string, { parameters }: Declaration, count: number): void {
  const needed = parameters.filter(({ optional }) => !optional);
  const names = (list: Declaration["parameters"]) => list.map((each) => each.name).join(", ");
  if (count < needed.length)
    throw new CustomFunctionsError(
      "#VALUE!",
      say("arguments-too-few", { name, needed: names(needed) }),
    );
  if (count > parameters.length && !parameters.some(({ repeating }) => repeating))
    throw new CustomFunctionsError(
      "#VALUE!",
      say("arguments-too-many", { name, count, taken: names(parameters) }),
    );
}

function errorsIn(result: unknown): Map<string, string> {
  const errors = new Map<string, string>();
  const rows = Array.isArray(result) ? (result as unknown[][]) : [[result]];
  rows.forEach((cells, row) =>
    cells.forEach((cell, column) => {
      if (cell instanceof CustomFunctionsError && cell.message)
        errors.set(offsetKey(row, column), cell.message);
    }),
  );
  return errors;
}
