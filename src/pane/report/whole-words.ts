import { element } from "../kit/element";

/** A word of so many letters may be parted: it would push a table over the edge of the paper. */
const LONGEST_WORD = 18;
const LONG_WORDS = new RegExp(`\\S{${LONGEST_WORD}}(?=\\S)`, "gu");
/** Words in which a browser would begin a new line after the hyphen: "LW-4500", "2026-06-10". */
const HYPHENATED = new RegExp(`(?<=^|\\s)(?=\\S{1,${LONGEST_WORD}}(?:\\s|$))(\\S+-\\S+)`, "u");

/**
 * A text for paper in which no word is parted but a very long one, and no number from its percent sign.
 */
export function wholeWords(text: string): (Node | string)[] {
  return text
    .replace(/(\d) %/g, "$1\u00a0%")
    .split(HYPHENATED)
    .map((part, i) =>
      i % 2 === 1
        ? element("span", { class: "whole" }, part)
        : part.replace(LONG_WORDS, "$&\u200b"),
    );
}
