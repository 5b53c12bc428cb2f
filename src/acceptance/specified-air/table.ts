import type { UnitSystem } from "../../measure/unit-system";

/** A nominal maximum aggregate size as a table lists it; a table may know it in one unit only. */
export interface ListedSize {
  readonly in?: number;
  readonly mm?: number;
  /** As people write it. */
  readonly written: string;
}

/** One table of specified total air content, of one edition of one code. */
export interface SpecifiedAirTable {
  /** Code and edition, as they are given to the function. */
  readonly name: string;
  /** The columns; absent where the code asks for the same air with every aggregate. */
  readonly sizes?: readonly ListedSize[];
  /** Air, %, of each exposure: one value for each size, or one alone. */
  readonly air: Readonly<Record<string, readonly number[]>>;
  /** By how much, %, the value may be lower where the specified strength is above a limit. */
  readonly lower?: { readonly by: number; readonly above: Readonly<Record<UnitSystem, number>> };
}

/** The sizes of the American tables, in the order of their columns. */
export const AMERICAN_SIZES: readonly ListedSize[] = [
  { in: 0.375, mm: 9.5, written: "3/8 in (9.5 mm)" },
  { in: 0.5, mm: 12.5, written: "1/2 in (12.5 mm)" },
  { in: 0.75, mm: 19, written: "3/4 in (19 mm)" },
  { in: 1, mm: 25, written: "1 in (25 mm)" },
  { in: 1.5, mm: 37.5, written: "1 1/2 in (37.5 mm)" },
  { in: 2, mm: 50, written: "2 in (50 mm)" },
  { in: 3, mm: 75, written: "3 in (75 mm)" },
];
