import { FunctionType, type IFunctionInfo } from "@univerjs/preset-sheets-core";
import { speech } from "../../messages/speech";
import type { LoadedFunction } from "./load-functions";
import { NAMESPACE } from "./worksheet-function";

/** What the spreadsheet shows while a formula is typed, from the function's declaration. */
export function functionHelp({ help, example }: LoadedFunction): IFunctionInfo {
  const { name, description, parameters } = help[speech().language];
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
