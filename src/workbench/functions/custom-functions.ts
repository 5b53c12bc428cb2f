/** A worksheet function as Excel would call it: every argument a table of cells, and so the result. */
export type Implementation = (...tables: unknown[]) => unknown;

/** An error that a worksheet function puts into a cell, with its sentence. */
export class CustomFunctionsError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? "");
    this.name = "CustomFunctionsError";
  }
}

/**
 * The part of Excel's `CustomFunctions` that functions.js needs.
 *
 * @param implementations Where the functions are put, by id, as functions.js declares them.
 */
export function customFunctionsFor(implementations: Map<string, Implementation>) {
  return {
    /** Asked by functions.js, which cannot be sure of it in every Excel. */
    handsOverBlanks: true,
    associate(id: string, implementation: Implementation): void {
      implementations.set(id, implementation);
    },
    Error: CustomFunctionsError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
  };
}
