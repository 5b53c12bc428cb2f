import { folded } from "../measure/folded";

const MARKS = new Set(
  [
    '"',
    "''",
    "”",
    "“",
    "″",
    "〃",
    "ditto",
    "do.",
    "same",
    "same as above",
    "idem",
    "id.",
    "dito",
  ].concat(["lo mismo", "igual", "dto.", "dito."]),
);
const LONGEST = 13;

/** Whether a cell stands for the one above it: ", 〃, "ditto", "ídem", "dito". */
export function isDitto(cell: string): boolean {
  if (cell.length > LONGEST + 2) return false;
  const written = cell.trim();
  return MARKS.has(written) || MARKS.has(folded(written));
}
