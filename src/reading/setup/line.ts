import { isBlank, quoted, type CellValue } from "../../measure/cell-value";

/** Where the headings of a part of a setup stand, from 0, and the units written in them. */
export interface Headings<Heading extends string> {
  readonly at: Readonly<Partial<Record<Heading, number>>>;
  readonly units?: Readonly<Partial<Record<Heading, string>>>;
  /** The headings as they are written. */
  readonly written?: Readonly<Partial<Record<Heading, string>>>;
}

/** What stands in one line below the headings of a part. */
export interface Line<Heading extends string> {
  readonly cells: Readonly<Partial<Record<Heading, CellValue>>>;
  readonly units: Readonly<Partial<Record<Heading, string>>>;
  /** The heading as it is written, for what is said of a cell. */
  readonly heading: (heading: Heading) => string;
}

/** `undefined` where a line has nothing below the headings of a part. */
export function lineBelow<Heading extends string>(
  headings: Headings<Heading> | undefined,
  row: readonly CellValue[],
): Line<Heading> | undefined {
  if (!headings) return undefined;
  const places = Object.entries(headings.at) as [Heading, number][];
  const filled = places.filter(([, at]) => !isBlank(row[at]));
  if (filled.length === 0) return undefined;
  const cells = Object.fromEntries(filled.map(([heading, at]) => [heading, row[at]!]));
  const { units = {} as Line<Heading>["units"], written } = headings;
  return {
    cells: cells as Line<Heading>["cells"],
    units,
    heading: (heading) => quoted(written?.[heading] ?? heading),
  };
}
