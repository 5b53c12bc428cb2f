/** What is known of how blank cells come to the functions here. */
export interface BlankCells {
  /**
   * Whether a blank cell among these may have come as 0.
   *
   * @param given The rows of an argument, as they were handed over.
   */
  mayBeZero(given: readonly unknown[]): boolean;
  /** Takes note of what a cell came as that is blank. */
  saw(blankCell: "blank" | "zero"): void;
}

let here: BlankCells = { mayBeZero: () => false, saw: () => {} };

/** How blank cells come here: as blanks, unless a spreadsheet is known that may do otherwise. */
export function blankCells(): BlankCells {
  return here;
}

/** Says how blank cells come in the spreadsheet at hand; before any function is called. */
export function letBlankCellsCome(how: BlankCells): void {
  here = how;
}
