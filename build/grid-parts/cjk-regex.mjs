/**
 * Stands in for `cjk-regex`, which works the same sets of characters out from tables of 460 kB while
 * the page loads. Browsers know them.
 */
const LETTERS =
  "(?=[\\p{Lo}\\p{Nl}\\p{So}\\p{Lm}])[\\p{Script=Han}\\p{Script=Katakana}\\p{Script=Hiragana}\\p{Script=Hangul}\\p{Script=Bopomofo}]";
const PUNCTUATION =
  "[\\u2FF0-\\u2FFF\\u3000-\\u303F\\u30A0-\\u30FF\\u3190-\\u319F\\u31C0-\\u31EF\\u3200-\\u33FF\\uFE10-\\uFE1F\\uFE30-\\uFE6F\\uFF00-\\uFFEF]";

/** A set of characters as the package hands it out. */
const charset = (pattern) => ({ toRegExp: () => new RegExp(pattern, "u") });

export const letters = () => charset(LETTERS);
export const punctuations = () => charset(`(?!${LETTERS})${PUNCTUATION}`);
export const all = () => charset(`${LETTERS}|${PUNCTUATION}`);
