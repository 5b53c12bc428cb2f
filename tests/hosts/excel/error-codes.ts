import { readFileSync } from "node:fs";

/* The error codes that Excel and its client library are documented to give. */

/**
 * Source: Microsoft Learn, "Error handling with the application-specific JavaScript APIs", the general table and
 * that of Excel, read in the repository OfficeDev/office-js-docs-pr; `InvalidCellAddress` from the notes on
 * `NoteCollection.add` in @types/office-js.
 */
const ON_MICROSOFT_LEARN = [
  "AccessDenied",
  "ActivityLimitReached",
  "ApiNotAvailable",
  "ApiNotFound",
  "BadPassword",
  "Client Error",
  "Conflict",
  "ContentLengthRequired",
  "EmptyChartSeries",
  "FilteredRangeConflict",
  "FormulaLengthExceedsLimit",
  "GeneralException",
  "HostRestartNeeded",
  "InactiveWorkbook",
  "InsertDeleteConflict",
  "InvalidArgument",
  "InvalidBinding",
  "InvalidCellAddress",
  "InvalidOperation",
  "InvalidOperationInCellEditMode",
  "InvalidReference",
  "InvalidRequest",
  "InvalidRibbonDefinition",
  "InvalidSelection",
  "ItemAlreadyExists",
  "ItemNotFound",
  "MemoryLimitReached",
  "MergedRangeConflict",
  "NonBlankCellOffSheet",
  "NotImplemented",
  "OperationCellsExceedLimit",
  "PivotTableRangeConflict",
  "RangeExceedsLimit",
  "RefreshWorkbookLinksBlocked",
  "RequestAborted",
  "RequestPayloadSizeLimitExceeded",
  "ResponsePayloadSizeLimitExceeded",
  "ServiceNotAvailable",
  "Unauthenticated",
  "UnsupportedFeature",
  "UnsupportedOperation",
  "UnsupportedSheet",
];

/** Source: the enumeration `Excel.ErrorCodes` in Microsoft's type declarations. */
function inDeclarations(): string[] {
  const declarations = readFileSync(require.resolve("@types/office-js/index.d.ts"), "utf8");
  const [, excel = ""] = declarations.split("declare namespace Excel {");
  const [, codes = ""] = /enum ErrorCodes \{([^}]*)\}/.exec(excel) ?? [];
  return [...codes.matchAll(/"(\w+)"/g)].map(([, code = ""]) => code);
}

/** All of them, with those that the client library gives of its own. */
export function documentedCodes(): string[] {
  const { ErrorCodes } = OfficeExtension as unknown as { ErrorCodes: Record<string, string> };
  return [
    ...new Set([...ON_MICROSOFT_LEARN, ...inDeclarations(), ...Object.values(ErrorCodes)]),
  ].sort();
}
