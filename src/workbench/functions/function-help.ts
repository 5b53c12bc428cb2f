import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import type { Declaration } from "./declaration";
import { NAMESPACE } from "./worksheet-function";

/** What the spreadsheet shows while a formula is typed, from the function's declaration. */
export function functionHelp({ name, description, parameters }: Declaration): IFunctionInfo {
  return {
    functionName: NAMESPACE + name,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map((parameter) => ({
      name: parameter.name,
      detail: parameter.description,
      example: "",
      require: parameter.optional ? 0 : 1,
      repeat: parameter.repeating ? 1 : 0,
    })),
  };
}
