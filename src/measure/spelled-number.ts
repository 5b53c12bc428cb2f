import { folded } from "./folded";

/** How none of something is written in English, Spanish, French and German, folded. */
const NONE = new Set(
  "none nil no zero nothing ninguno ninguna nada cero sin aucun aucune neant rien pas kein keine keiner keines keinen nichts ohne null".split(
    " ",
  ),
);

/** Small numbers in words, folded; those of one place are the same number. */
const COUNTED: readonly string[] = [
  "one un una uno une ein eine einen einer",
  "two dos deux zwei",
  "three tres trois drei",
  "four cuatro quatre vier",
  "five cinco cinq funf fuenf",
  "six seis sechs",
  "seven siete sept sieben",
  "eight ocho huit acht",
  "nine nueve neuf neun",
  "ten diez dix zehn",
];
const SPELLED = new Map(
  COUNTED.flatMap((words, i) => words.split(" ").map((word) => [word, i + 1] as const)),
);

/** Whether a text says that there was none: "none", "ninguno", "aucun", "keine". */
export function saysNone(text: string): boolean {
  return NONE.has(folded(text).trim());
}

/** The number that a word stands for: 0 for none, up to ten; `undefined` for any other text. */
export function spelledNumber(text: string): number | undefined {
  const word = folded(text).trim();
  return NONE.has(word) ? 0 : SPELLED.get(word);
}
