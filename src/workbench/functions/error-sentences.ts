/** A cell, by sheet and position from 0. */
export interface Cell {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/**
 * Why cells show an error. Excel tells it on the card of the cell; a spreadsheet without such a
 * card has to be asked here. A sentence is kept under the cell of the formula and the function in
 * it, so that a function that succeeds there takes back only what it said itself.
 */
export class ErrorSentences {
  private readonly said = new Map<string, Map<string, string>>();

  /** Keeps what a function says about the cells of its result, or takes it back. */
  keep(functionName: string, from: Cell, errors: ReadonlyMap<string, string>): void {
    const key = `${functionName} ${keyOf(from)}`;
    if (errors.size === 0) this.said.delete(key);
    else
      this.said.set(
        key,
        new Map([...errors].map(([offset, sentence]) => [cellAt(from, offset), sentence])),
      );
  }

  /** What was said about a cell that shows an error. */
  about(cell: Cell): string | undefined {
    const key = keyOf(cell);
    for (const sentences of this.said.values()) {
      const sentence = sentences.get(key);
      if (sentence) return sentence;
    }
    return undefined;
  }

  /** Forgets everything, before all formulas are computed anew. */
  clear(): void {
    this.said.clear();
  }
}

/** Where in a result an error stands, from its first cell. */
export function offsetKey(row: number, column: number): string {
  return `${row},${column}`;
}

function cellAt(from: Cell, offset: string): string {
  const [row, column] = offset.split(",").map(Number) as [number, number];
  return keyOf({ ...from, row: from.row + row, column: from.column + column });
}

function keyOf({ sheetId, row, column }: Cell): string {
  return `${sheetId} ${row},${column}`;
}
