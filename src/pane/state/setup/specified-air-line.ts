import { USUAL_TOLERANCE } from "../../../acceptance/spec-limits";
import { specifiedAir } from "../../../acceptance/specified-air/specified-air";
import { aggregateSizeFromCell } from "../../../measure/aggregate-size";
import { shownValue } from "../../../measure/cell-value";
import { isIssue, issueSentence } from "../../../measure/issue";
import { say } from "../../../messages/pane-catalogue";
import type { MixHeading } from "../../../reading/setup/mix-headings";
import { isEmpty, type NewLine } from "./setup-edits";

/** A line of the specifications by mix. */
export type MixLine = NewLine<MixHeading>;

/** A table of specified air, and for what it is asked where a line does not say so itself. */
export interface SpecifiedFrom {
  readonly table: string;
  readonly exposure: string;
  /** As typed; "" where the table has no sizes. */
  readonly size: string;
}

/** Codes that ask for no less than the air of their table, and set no upper limit there. */
const LEAST_OF = new Set(["EN 206", "DIN 1045-2"]);

const AIR_LIMITS: readonly MixHeading[] = ["air target", "air tolerance", "air low", "air high"];

/** The columns that specified air is written into. */
export function headingsOfAir(from: SpecifiedFrom | undefined): readonly MixHeading[] {
  if (!from) return [];
  return LEAST_OF.has(from.table) ? ["air low"] : ["air target", "air tolerance"];
}

/** Specified air for a line without air limits; nothing for one that has some; else why there is none. */
export function airFor(
  mix: string,
  line: MixLine,
  sizeSeen: string | undefined,
  from: SpecifiedFrom,
): MixLine | string {
  if (AIR_LIMITS.some((heading) => !isEmpty(line[heading]))) return {};
  const written = isEmpty(line.aggregateSize) ? (sizeSeen ?? from.size) : line.aggregateSize!;
  const exposure = isEmpty(line.exposure) ? from.exposure : shownValue(line.exposure);
  const size = aggregateSizeFromCell(written, "us");
  const aggregate = isIssue(size) ? aggregateSizeFromCell(written, "si") : size;
  const air = isIssue(aggregate)
    ? aggregate
    : specifiedAir({ aggregate, exposure }, from.table, "us");
  if (isIssue(air)) return say("pane-mix-not-filled", { mix, why: issueSentence(air) });
  const limits: MixLine = LEAST_OF.has(from.table)
    ? { "air low": air }
    : { "air target": air, "air tolerance": USUAL_TOLERANCE };
  const ofSize = shownValue(written) === "" ? {} : { aggregateSize: written };
  const given: MixLine = { ...limits, ...ofSize, exposure, source: sourceOf(from.table) };
  return Object.fromEntries(
    Object.entries(given).filter(([heading]) => isEmpty(line[heading as MixHeading])),
  ) as MixLine;
}

/** The table, and that the tolerance is only the usual one. */
function sourceOf(table: string): string {
  return LEAST_OF.has(table)
    ? table
    : say("setup-source-with-tolerance", { table, tolerance: USUAL_TOLERANCE });
}
