import { ENGLISH_HELD_OUT } from "./corpus/english-held-out";
import { ENGLISH_WORKED } from "./corpus/english-worked";
import { FRENCH_HELD_OUT } from "./corpus/french-held-out";
import { FRENCH_WORKED } from "./corpus/french-worked";
import { GERMAN_HELD_OUT } from "./corpus/german-held-out";
import { GERMAN_WORKED } from "./corpus/german-worked";
import type { HeaderCase } from "./corpus/header-case";
import { SPANISH_HELD_OUT } from "./corpus/spanish-held-out";
import { SPANISH_WORKED } from "./corpus/spanish-worked";
import { scoreOf, type Outcome } from "./corpus-score";

/**
 * Tables by language with the least share of columns that has to come out right.
 *
 * The worked tables were looked at while the vocabulary was written. The held-out ones were first looked
 * at when it was finished. On that first look 504 of their 598 columns (84 %) were right: English 193 of
 * 246, Spanish 102 of 118, French 103 of 117, German 106 of 117; 64 were asked about, 22 missed, 3 wrong
 * and 5 left out without a word. What was at fault in the reading, rather than in the words, was then
 * mended, and some words were added; the shares here are those after that, so they no longer say how
 * tables that nobody has looked at come out.
 */
const PARTS: readonly (readonly [part: string, tables: readonly HeaderCase[], least: number])[] = [
  ["English, worked", ENGLISH_WORKED, 0.99],
  ["Spanish, worked", SPANISH_WORKED, 0.99],
  ["French, worked", FRENCH_WORKED, 0.99],
  ["German, worked", GERMAN_WORKED, 0.99],
  ["English, held out", ENGLISH_HELD_OUT, 0.88],
  ["Spanish, held out", SPANISH_HELD_OUT, 0.96],
  ["French, held out", FRENCH_HELD_OUT, 0.98],
  ["German, held out", GERMAN_HELD_OUT, 0.97],
];
const OUTCOMES: readonly Outcome[] = ["right", "missed", "asked", "wrong", "silent"];

const scores = PARTS.map(([part, tables, least]) => ({ part, least, ...scoreOf(tables) }));

afterAll(() => {
  const lines = scores.map(({ part, counts }) => [part, ...OUTCOMES.map((each) => counts[each])]);
  const table = [["columns", ...OUTCOMES], ...lines].map((line) =>
    line.map((cell, i) => (i === 0 ? String(cell).padEnd(18) : String(cell).padStart(7))).join(""),
  );
  process.stdout.write(`${table.join("\n")}\n`);
});

test.each(scores)(
  "$part: $least right, none wrong, none left out without a word",
  ({ least, counts, misses }) => {
    const all = OUTCOMES.reduce((sum, outcome) => sum + counts[outcome], 0);
    expect(misses.filter(({ outcome }) => outcome === "wrong" || outcome === "silent")).toEqual([]);
    expect(counts.right / all).toBeGreaterThanOrEqual(least);
  },
);
