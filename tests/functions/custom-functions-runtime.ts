/** The part of the custom functions runtime that our functions use; tests stand in for the host. */
class CellError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
  }
}

Object.assign(globalThis, {
  CustomFunctions: {
    Error: CellError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
    associate: () => undefined,
  },
});

/** What a cell shows: its value, or its error code with the sentence. */
export function shown(run: () => unknown[][]): unknown {
  try {
    const cells = run().map((row) =>
      row.map((cell) => (cell instanceof CellError ? cell.code : cell)),
    );
    return cells.length === 1 && cells[0]!.length === 1 ? cells[0]![0] : cells;
  } catch (error) {
    if (error instanceof CellError) return `${error.code} ${error.message}`;
    throw error;
  }
}
