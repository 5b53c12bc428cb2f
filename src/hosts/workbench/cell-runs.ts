/** A rectangle one column wide, its last row included. */
export interface Run {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/** Cells as few rectangles: neighbours below each other become one. */
export function cellRuns(cells: readonly { row: number; column: number }[]): Run[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: Run[] = [];
  for (const { row, column } of sorted) {
    const last = runs.at(-1);
    if (last && last.startColumn === column && row <= last.endRow + 1)
      runs[runs.length - 1] = { ...last, endRow: Math.max(row, last.endRow) };
    else runs.push({ startRow: row, endRow: row, startColumn: column, endColumn: column });
  }
  return runs;
}

/** How many cells the rectangles cover. */
export function cellCount(runs: readonly Run[]): number {
  return runs.reduce(
    (sum, { startRow, endRow, startColumn, endColumn }) =>
      sum + (endRow - startRow + 1) * (endColumn - startColumn + 1),
    0,
  );
}
