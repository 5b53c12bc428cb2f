import { shownValue, type CellValue } from "../measure/cell-value";
import { FIELDS, type FieldId } from "./fields";
import type { ColumnPlace, Columns } from "./sheet-context";

/** Words that say nothing about what a column holds. */
const NEUTRAL = new Set(
  "a at by concrete fresh in meter no number of on recorded test tested the value volumetric".split(
    " ",
  ),
);
/** Units and the like that stand behind a heading without brackets: "alcohol oz", "air %". */
const UNITS = new Set(
  "% pct percent pt pts pint pints oz ozs ounces l liter liters litre litres ml min mins minute minutes s sec secs seconds".split(
    " ",
  ),
);

interface Heading {
  readonly words: readonly string[];
  readonly unit?: string;
}

interface Candidate {
  readonly index: number;
  readonly field: FieldId;
  readonly score: number;
  readonly unit?: string;
}

/**
 * Recognises what the columns of a field sheet hold from their headers.
 *
 * A header that is one of a field's headings wins over one that only contains it; with equals, the
 * column further left. A field has one column and a column one field.
 *
 * @param headers The header cells, in order.
 * @returns For each field found, its place, header and the unit written in the header.
 */
export function recogniseColumns(headers: readonly CellValue[]): Columns {
  const candidates = headers
    .flatMap((header, index) => candidatesFor(readHeading(shownValue(header)), index))
    .sort((a, b) => b.score - a.score || a.index - b.index);
  const columns: Partial<Record<FieldId, ColumnPlace>> = {};
  const taken = new Set<number>();
  for (const { index, field, unit } of candidates) {
    if (columns[field] || taken.has(index)) continue;
    taken.add(index);
    columns[field] = { index, header: shownValue(headers[index]).trim(), unit };
  }
  return columns;
}

/** Splits a header into its words and the unit in brackets or at its end. */
function readHeading(header: string): Heading {
  const bracketed = [...header.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => match[1]!.trim());
  const words = header
    .replace(/[([][^)\]]*[)\]]/g, " ")
    .toLowerCase()
    .replace(/#/g, " no ")
    .replace(/[^\p{L}\p{N}%±]+/gu, " ")
    .trim()
    .split(" ");
  const units: string[] = [];
  while (words.length > 1 && UNITS.has(words.at(-1)!)) units.unshift(words.pop()!);
  return { words, unit: bracketed[0] ?? (units.join(" ") || undefined) };
}

function candidatesFor({ words, unit }: Heading, index: number): Candidate[] {
  const text = words.join(" ");
  if (text === "") return [];
  return Object.entries(FIELDS).flatMap(([field, { headings }]) => {
    const score = Math.max(...headings.map((heading) => likeness(text, words, heading)));
    return score > 0 ? [{ index, field: field as FieldId, score, unit }] : [];
  });
}

/** 1000 for the heading itself, its length for a header that contains it, 0 for any other. */
function likeness(text: string, words: readonly string[], heading: string): number {
  if (text === heading) return 1000;
  if (!` ${text} `.includes(` ${heading} `)) return 0;
  const parts = heading.split(" ");
  const others = words.filter((word) => !parts.includes(word));
  // One word alone may mean anything in company: "air temperature" is not the air content.
  return parts.length > 1 || others.every((word) => NEUTRAL.has(word)) ? heading.length : 0;
}
