/*
 * How our notes are told from everybody else's. The last line of each holds a digest of the lines above it,
 * so that it is known again letter for letter, also on a copied sheet or in a copied workbook. Notes of
 * earlier versions had that line first, and are still known.
 */

const SIGN = /^Checked with FRESH \((\d+) lines?( above)?, ([0-9a-z]+)\)$/;
const BEGINS_LIKE_OURS = "Checked with FRESH (";

/** Whose a note is. */
export type NoteReading =
  /** Somebody else's: nothing in it is ours. */
  | { readonly whose: "theirs" }
  /** Ours, letter for letter, and nothing else. */
  | { readonly whose: "ours" }
  /** Our lines stand in it whole and unchanged; `rest` is what it holds besides, as it was written. */
  | { readonly whose: "shared"; readonly rest: string }
  /** It begins like one of ours, but its lines are not what we wrote. It counts as somebody else's. */
  | { readonly whose: "changed" };

/** The text of a note of ours: the words of the findings, and our sign below. */
export function noteText(sentences: readonly string[]): string {
  const lines = sentences.flatMap((sentence) => linesOf(sentence).map(withoutEnd));
  return [...lines, sign(lines)].join("\n");
}

/** Reads a note: whose it is, and what in it is not ours. */
export function readNote(text: string): NoteReading {
  const lines = linesOf(text);
  const ours = new Set<number>();
  for (let at = 0; at < lines.length; at += 1)
    for (const line of ourLinesBy(lines, at)) ours.add(line);
  const others = lines.filter((_, line) => !ours.has(line));
  if (ours.size === 0) {
    return {
      whose: others.some((line) => line.startsWith(BEGINS_LIKE_OURS)) ? "changed" : "theirs",
    };
  }
  let rest = others.join("");
  // Where our lines stand last, the line end before them was there for them.
  if (ours.has(lines.length - 1) && !/[\r\n]$/.test(text))
    rest = rest.replace(/(?:\r\n|\r|\n)$/, "");
  return rest.trim() === "" ? { whose: "ours" } : { whose: "shared", rest };
}

/** The lines that a sign of ours at a line stands for, with it; none where they are not what it says. */
function ourLinesBy(lines: readonly string[], at: number): number[] {
  const [own, counted, above] = SIGN.exec(withoutEnd(lines[at]!)) ?? [];
  if (own === undefined) return [];
  const count = Number(counted);
  const from = above ? at - count : at + 1;
  const told = lines.slice(Math.max(0, from), from + count).map(withoutEnd);
  if (told.length !== count || sign(told, above ?? "") !== own) return [];
  return Array.from({ length: count + 1 }, (_, i) => (above ? from : at) + i);
}

function sign(told: readonly string[], where = " above"): string {
  const count = told.length;
  const lines = count === 1 ? "line" : "lines";
  return `Checked with FRESH (${count} ${lines}${where}, ${digest(told.join("\n"))})`;
}

/** Lines, each with its line end. */
function linesOf(text: string): string[] {
  return text.match(/[^\r\n]*(?:\r\n|\r|\n)|[^\r\n]+$/g) ?? [];
}

function withoutEnd(line: string): string {
  return line.replace(/[\r\n]+$/, "");
}

/** 64 bits of a text, as letters and digits: FNV-1a, twice, from two starting values. */
function digest(text: string): string {
  return lane(text, 0x811c9dc5) + lane(text, 0x9747b28c);
}

function lane(text: string, start: number): string {
  const { imul } = Math;
  let hash = start;
  for (let i = 0; i < text.length; i += 1) hash = imul(hash ^ text.charCodeAt(i), 0x01000193);
  // FNV leaves its last letters in the low bits; this spreads them.
  hash = imul(hash ^ (hash >>> 16), 0x85ebca6b);
  return ((hash ^ (hash >>> 13)) >>> 0).toString(36).padStart(7, "0");
}
