import { ENGLISH_HELD_OUT } from "./corpus/english-held-out";
import { ENGLISH_WORKED } from "./corpus/english-worked";
import { FRENCH_HELD_OUT } from "./corpus/french-held-out";
import { FRENCH_WORKED } from "./corpus/french-worked";
import { GERMAN_HELD_OUT } from "./corpus/german-held-out";
import { GERMAN_WORKED } from "./corpus/german-worked";
import type { HeaderCase } from "./corpus/header-case";
import { SPANISH_HELD_OUT } from "./corpus/spanish-held-out";
import { SPANISH_WORKED } from "./corpus/spanish-worked";
import { BLIND_TABLES } from "./corpus/blind/tables";
import { SECOND_BLIND_TABLES } from "./corpus/blind-second/tables";
import { THIRD_BLIND_TABLES } from "./corpus/blind-third/tables";
import { FOURTH_BLIND_TABLES } from "./corpus/blind-fourth/tables";
import { NEWER_THAN_BLIND, scoreOf, type Outcome } from "./corpus-score";

/**
 * Tables by language with the least share of columns that has to come out right.
 *
 * The worked tables were looked at while the vocabulary was written. The held-out ones were first looked
 * at when it was finished. On that first look 504 of their 598 columns (84 %) were right: English 193 of
 * 246, Spanish 102 of 118, French 103 of 117, German 106 of 117; 64 were asked about, 22 missed, 3 wrong
 * and 5 left out without a word. What was at fault in the reading, rather than in the words, was then
 * mended, and some words were added; the shares here are those after that, so they no longer say how
 * tables that nobody has looked at come out.
 *
 * The blind tables were written later by somebody who had not seen the vocabulary, and first looked at when
 * it had been made of parts of words and tried on some 1,800 single headers. On that first look 813 of
 * their 914 columns (88.9 %) were right, 48 missed, 30 asked about, 22 wrong and 1 left out without a word:
 * English 365, 27, 9, 8 and 1 of 410, Spanish 171, 9, 8 and 2 of 190, French 132, 7, 7 and 6 of 152, German
 * 145, 5, 6 and 6 of 162. Then the causes were mended and two answers corrected (its README says which), so
 * that these shares no longer tell of unseen tables either.
 *
 * The second blind tables were written by somebody who had seen neither the vocabulary nor the other tables,
 * and first looked at when the first blind ones were mended. On that first look 746 of their 873 columns
 * (85.5 %) were right, 68 missed, 47 asked about, 9 wrong and 3 left out without a word: English 380, 43, 34,
 * 4 and 1 of 462, Spanish 133, 12, 4, 2 and 0 of 151, French 117, 7, 2, 2 and 2 of 130, German 116, 6, 7, 1
 * and 0 of 130. So about one column in seven of a sheet that nobody here has seen is not read by itself, and
 * one in seventy is read wrongly or passed over. Then the causes were mended, and no answer was changed: these
 * shares tell of unseen tables no more than the others.
 *
 * On the first look at the third 310 of their 360 columns (86.1 %) were right, 24 missed, 19 asked about, 6
 * wrong and 1 left out without a word: English 190, 21, 15, 4 and 1 of 231, Spanish 56, 1, 0, 1 and 0 of 58,
 * French 31, 0, 3, 0 and 0 of 34, German 33, 2, 1, 1 and 0 of 37. What was at fault in the reading was mended
 * (two measurements before and after an act, limits that no air can have, dates of something unknown), and
 * the words that are of the trade were added, not those of one notebook.
 *
 * On the first look at the fourth, by another hand and wilfully odd, 736 of its 1,085 columns (68 %) were right, 209
 * missed, 119 asked about, 19 wrong and 2 left out without a word: English, looked at when the others had been
 * mended, 345, 95, 55, 7 and 0 of 502, Spanish 154, 41, 26, 3 and 1 of 225, French 141,
 * 33, 17, 3 and 0 of 194, German 96, 40, 21, 6 and 1 of 164. What was at fault in the reading was mended ("mín °C"
 * was no number, whose test it was is asked about, a sign at the end is a limit), and words were added.
 */
const PARTS: readonly (readonly [part: string, tables: readonly HeaderCase[], least: number])[] = [
  ["English, worked", ENGLISH_WORKED, 0.99],
  ["Spanish, worked", SPANISH_WORKED, 0.99],
  ["French, worked", FRENCH_WORKED, 0.99],
  ["German, worked", GERMAN_WORKED, 0.99],
  ["English, held out", ENGLISH_HELD_OUT, 0.96],
  ["Spanish, held out", SPANISH_HELD_OUT, 0.96],
  ["French, held out", FRENCH_HELD_OUT, 0.98],
  ["German, held out", GERMAN_HELD_OUT, 0.97],
];

const LEAST_OF_SECOND_BLIND: Readonly<Record<string, number>> = {
  English: 0.96,
  Spanish: 0.97,
  French: 0.97,
  German: 0.97,
};

/** The blind tables know most fields of today. */
const BLIND = BLIND_TABLES.map(({ language, tables }) => {
  return { part: `${language}, blind`, least: 0.97, ...scoreOf(tables, NEWER_THAN_BLIND) };
});

/** The second blind tables know every field of today, and keep apart how tables of a second hand come out. */
const SECOND_BLIND = SECOND_BLIND_TABLES.map(({ language, tables }) => {
  const least = LEAST_OF_SECOND_BLIND[language]!;
  return { part: `${language}, blind 2`, least, ...scoreOf(tables, new Set()) };
});

const LEAST_OF_THIRD_BLIND: Readonly<Record<string, number>> = {
  English: 0.92,
  Spanish: 0.98,
  French: 0.98,
  German: 0.94,
};

const THIRD_BLIND = THIRD_BLIND_TABLES.map(({ language, tables }) => {
  const least = LEAST_OF_THIRD_BLIND[language]!;
  return { part: `${language}, blind 3`, least, ...scoreOf(tables, new Set()) };
});

const LEAST_OF_FOURTH_BLIND: Readonly<Record<string, number>> = {
  English: 0.8,
  Spanish: 0.94,
  French: 0.91,
  German: 0.89,
};

const FOURTH_BLIND = FOURTH_BLIND_TABLES.map(({ language, tables }) => {
  const least = LEAST_OF_FOURTH_BLIND[language]!;
  return { part: `${language}, blind 4`, least, ...scoreOf(tables, new Set()) };
});

const OUTCOMES: readonly Outcome[] = ["right", "missed", "asked", "wrong", "silent"];

const scores = [
  ...PARTS.map(([part, tables, least]) => ({ part, least, ...scoreOf(tables) })),
  ...BLIND,
  ...SECOND_BLIND,
  ...THIRD_BLIND,
  ...FOURTH_BLIND,
];

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
