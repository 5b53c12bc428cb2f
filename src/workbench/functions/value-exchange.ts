import type { Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type FunctionVariantType,
} from "@univerjs/preset-sheets-core";
import { CustomFunctionsError } from "./custom-functions";

const ERROR_CODES: readonly string[] = Object.values(ErrorType);

/** What the spreadsheet hands over for an argument, as Excel would: a table, blanks as null. */
export function tableFrom(given: FunctionVariantType): unknown[][] {
  const value = given.isReferenceObject() ? referenced(given) : (given as BaseValueObject);
  if (!value.isArray()) return [[plainFrom(value)]];
  return (value as ArrayValueObject).getArrayValue().map((row) => row.map(plainFrom));
}

function referenced(given: FunctionVariantType): BaseValueObject {
  return (given as { toArrayValueObject(useCache: boolean): ArrayValueObject }).toArrayValueObject(
    false,
  );
}

function plainFrom(value: Nullable<BaseValueObject>): unknown {
  if (!value || value.isNull()) return null;
  if (value.isError()) return new CustomFunctionsError((value as ErrorValueObject).getErrorType());
  return value.getValue();
}

/** The result of a worksheet function as the spreadsheet takes it. One cell does not spill. */
export function resultFrom(table: unknown): BaseValueObject {
  if (!Array.isArray(table)) return cellFrom(table);
  const rows = table as unknown[][];
  const columns = rows[0]?.length ?? 0;
  if (rows.length === 1 && columns === 1) return cellFrom(rows[0]![0]);
  return ArrayValueObject.create({
    calculateValueList: rows.map((row) => row.map(cellFrom)),
    rowCount: rows.length,
    columnCount: columns,
    unitId: "",
    sheetId: "",
    row: -1,
    column: -1,
  });
}

function cellFrom(value: unknown): BaseValueObject {
  if (value instanceof CustomFunctionsError) return errorFrom(value.code);
  if (typeof value === "number")
    return Number.isFinite(value) ? NumberValueObject.create(value) : errorFrom(ErrorType.NUM);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  if (value === null || value === undefined) return NullValueObject.create();
  return StringValueObject.create(String(value));
}

function errorFrom(code: string): ErrorValueObject {
  return ErrorValueObject.create(
    ERROR_CODES.includes(code) ? (code as ErrorType) : ErrorType.VALUE,
  );
}
