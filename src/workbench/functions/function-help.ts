import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import type { LoadedFunction } from "./load-functions";
import { NAMESPACE } from "./worksheet-function";

/** What the spreadsheet shows while a formula is typed, from the function's declaration. */
export function functionHelp({ declaration, example }: LoadedFunction): IFunctionInfo {
  const { name, description, parameters } = declaration;
  return {
    functionName: NAMESPACE + name,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map((parameter, i) => ({
      name: parameter.name,
      detail: parameter.description,
      example: example[i] ?? "",
      require: parameter.optional ? 0 : 1,
      repeat: parameter.repeating ? 1 : 0,
    })),
  };
}
