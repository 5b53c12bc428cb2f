/*
 * How our notes are told from everybody else's. The first line of each holds a digest of the lines below
 * it, so that it is known again letter for letter, also on a copied sheet or in a copied workbook.
 */

const FIRST_LINE = /^Checked with FRESH \((\d+) lines?, ([0-9a-z]+)\)$/;
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

/** The text of a note of ours. */
export function noteText(sentences: readonly string[]): string {
  const lines = sentences.flatMap((sentence) => linesOf(sentence).map(withoutEnd));
  return [firstLine(lines), ...lines].join("\n");
}

/** Reads a note: whose it is, and what in it is not ours. */
export function readNote(text: string): NoteReading {
  const lines = linesOf(text);
  const others: string[] = [];
  let found = false;
  let changed = false;
  let endsWithOurs = false;
  for (let i = 0; i < lines.length;) {
    const ours = ourLinesAt(lines, i);
    if (ours > 0) found = true;
    else {
      changed ||= lines[i]!.startsWith(BEGINS_LIKE_OURS);
      others.push(lines[i]!);
    }
    endsWithOurs = ours > 0;
    i += Math.max(1, ours);
  }
  if (!found) return { whose: changed ? "changed" : "theirs" };
  let rest = others.join("");
  // Where our lines stand last, the line end before them was there for them.
  if (endsWithOurs && !/[\r\n]$/.test(text)) rest = rest.replace(/(?:\r\n|\r|\n)$/, "");
  return rest.trim() === "" ? { whose: "ours" } : { whose: "shared", rest };
}

/** How many lines from one on are a first line of ours and what it says stands below it; 0 for none. */
function ourLinesAt(lines: readonly string[], at: number): number {
  const first = withoutEnd(lines[at]!);
  const count = Number(FIRST_LINE.exec(first)?.[1] ?? NaN);
  const below = lines.slice(at + 1, at + 1 + count).map(withoutEnd);
  return below.length === count && firstLine(below) === first ? 1 + count : 0;
}

function firstLine(below: readonly string[]): string {
  const count = below.length;
  return `Checked with FRESH (${count} ${count === 1 ? "line" : "lines"}, ${digest(below.join("\n"))})`;
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
