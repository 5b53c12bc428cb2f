import { isBlank, shownValue, type CellValue } from "../../measure/cell-value";
import { ownHeading } from "./heading-words";
import type { Headings } from "./line";
import { mixHeadings, type MixHeading } from "./mix-headings";

/** The parts of a setup whose headings have been passed. */
export interface Parts {
  readonly columns?: Headings<"header" | "taken for" | "unit">;
  readonly settings?: Headings<"setting" | "value">;
  readonly mixes?: Headings<MixHeading>;
}

/** A row of headings: the parts that it heads, and the cells in it that head nothing of ours. */
export interface HeadedParts extends Parts {
  readonly notUsed: readonly number[];
}

/** The parts that a row heads; `undefined` where it is no row of headings. */
export function partsHeaded(row: readonly CellValue[]): HeadedParts | undefined {
  if (row.some((cell) => typeof cell === "number")) return undefined;
  const texts = row.map((cell) => (isBlank(cell) ? "" : shownValue(cell).trim()));
  if (texts.filter((text) => text !== "").length < 2) return undefined;
  const own = texts.map(ownHeading);
  const columns = headed(own, ["header", "taken for", "unit"], "taken for");
  const settings = headed(own, ["setting", "value"], "value");
  const mixes = mixesHeaded(texts);
  if (!columns && !settings && !mixes) return undefined;
  const used = new Set<number>(
    [columns, settings, mixes].flatMap((part) => Object.values(part?.at ?? {})),
  );
  const notUsed = texts.flatMap((text, at) => {
    return text === "" || used.has(at) || own[at] === "note" ? [] : [at];
  });
  return {
    ...(columns && { columns }),
    ...(settings && { settings }),
    ...(mixes && { mixes }),
    notUsed,
  };
}

/** The first place of each heading, where the first of them and the needed one are there. */
function headed<Heading extends string>(
  row: readonly (string | undefined)[],
  headings: readonly Heading[],
  needed: Heading,
): Headings<Heading> | undefined {
  const places = headings.map((heading) => [heading, row.indexOf(heading)] as const);
  const at = Object.fromEntries(
    places.filter(([, place]) => place >= 0),
  ) as Headings<Heading>["at"];
  return at[headings[0]!] === undefined || at[needed] === undefined ? undefined : { at };
}

/**
 * Specifications are headed by the mix and something that is specified for it, without a blank cell between
 * them: a line of another table may speak of a mix as well.
 */
function mixesHeaded(texts: readonly string[]): Headings<MixHeading> | undefined {
  const at: Partial<Record<MixHeading, number>> = {};
  const units: Partial<Record<MixHeading, string>> = {};
  const written: Partial<Record<MixHeading, string>> = {};
  const meant = mixHeadings(texts);
  const mix = meant.findIndex((heading) => heading?.is === "mix");
  if (mix < 0) return undefined;
  const [from, to] = [texts.lastIndexOf("", mix), texts.indexOf("", mix)];
  meant.forEach((heading, place) => {
    if (place <= from || (to >= 0 && place >= to)) return;
    if (!heading || at[heading.is] !== undefined) return;
    at[heading.is] = place;
    written[heading.is] = texts[place]!;
    if (heading.unit !== undefined) units[heading.is] = heading.unit;
  });
  return Object.keys(at).length < 2 ? undefined : { at, units, written };
}
