import { Problem } from "../../measure/problem";
import type { MessageId } from "../../messages/pane-catalogue";

/**
 * Our sentence for each error code that Excel and its client library are documented to give. Excel's
 * own texts are never shown: they are written for programmers and come in any language.
 */
export const SENTENCE_OF_CODE: Readonly<Record<string, MessageId>> = {
  AccessDenied: "sheet-protected",
  ActivityLimitReached: "host-overloaded",
  ApiNotAvailable: "excel-cannot",
  ApiNotFound: "excel-cannot",
  BadPassword: "not-signed-in",
  CannotRegisterEvent: "host-failed",
  CannotUpdateReadOnlyProperty: "host-failed",
  "Client Error": "host-failed",
  Conflict: "changed-meanwhile",
  ConnectionFailure: "host-overloaded",
  ContentLengthRequired: "host-failed",
  DirtySupportingFormula: "changed-meanwhile",
  EmptyChartSeries: "host-failed",
  FilteredRangeConflict: "cells-in-the-way",
  FormulaLengthExceedsLimit: "host-failed",
  GeneralException: "host-failed",
  HostRestartNeeded: "host-failed",
  InactiveWorkbook: "workbook-not-in-front",
  InsertDeleteConflict: "cells-in-the-way",
  InvalidArgument: "host-failed",
  InvalidBinding: "sheet-gone",
  InvalidCellAddress: "host-failed",
  InvalidObjectPath: "sheet-gone",
  InvalidOperation: "host-failed",
  InvalidOperationInCellEditMode: "host-busy",
  InvalidOrTimedOutSession: "host-overloaded",
  InvalidReference: "sheet-gone",
  InvalidRequest: "host-failed",
  InvalidRequestContext: "host-failed",
  InvalidRibbonDefinition: "host-failed",
  InvalidSelection: "selection-in-parts",
  ItemAlreadyExists: "changed-meanwhile",
  ItemNotFound: "sheet-gone",
  MemoryLimitReached: "host-overloaded",
  MergedRangeConflict: "cells-in-the-way",
  NonBlankCellOffSheet: "cells-in-the-way",
  NotImplemented: "excel-cannot",
  OpenWorkbookLinksBlocked: "links-blocked",
  OperationCellsExceedLimit: "too-much-at-once",
  PivotTableRangeConflict: "cells-in-the-way",
  PowerQueryRefreshResourceChallenge: "not-signed-in",
  PropertyNotLoaded: "host-failed",
  RangeExceedsLimit: "too-much-at-once",
  RangeImageExceedsLimit: "too-much-at-once",
  RefreshWorkbookLinksBlocked: "links-blocked",
  RequestAborted: "host-overloaded",
  RequestPayloadSizeLimitExceeded: "too-much-at-once",
  ResponsePayloadSizeLimitExceeded: "too-much-at-once",
  RunMustReturnPromise: "host-failed",
  ServiceNotAvailable: "host-overloaded",
  Timeout: "host-overloaded",
  Unauthenticated: "not-signed-in",
  UndoNotSupported: "excel-cannot",
  UnsupportedFeature: "excel-cannot",
  UnsupportedFillType: "excel-cannot",
  UnsupportedOperation: "excel-cannot",
  UnsupportedSheet: "sheet-not-of-cells",
  ValueNotLoaded: "host-failed",
  WriteNotSupportedWhenModalDialogOpen: "dialog-open",
};

const TOO_MUCH_TO_READ = new Set([
  "OperationCellsExceedLimit",
  "RangeExceedsLimit",
  "ResponsePayloadSizeLimitExceeded",
]);

/** The error code of whatever was thrown; "" where it has none. */
export function codeOf(error: unknown): string {
  const { code } = (error ?? {}) as { code?: unknown };
  return typeof code === "string" ? code : "";
}

/** Whether Excel refused because more was asked for than it hands over in one piece. */
export function isTooMuchToRead(error: unknown): boolean {
  return TOO_MUCH_TO_READ.has(codeOf(error));
}

/** Turns whatever went wrong in Excel into a problem with a sentence of ours. */
export function problemFromExcel(error: unknown): Problem {
  if (error instanceof Problem) return error;
  return new Problem(SENTENCE_OF_CODE[codeOf(error)] ?? "host-failed");
}
