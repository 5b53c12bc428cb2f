import type { Words } from "../sentence";

/** Why a column is read as what it is, or is not. */
export const readingMessages = {
  "read-as-headed": ({ header, field }: Words<"header" | "field">) =>
    `read as ${field} because “${header}” is how it is headed`,
  "read-as-said": ({ words, field }: Words<"words" | "field">) =>
    `read as ${field} because of its words: ${words}`,
  "read-as-said-and-holds": ({ words, field }: Words<"words" | "field">) =>
    `read as ${field} because of its words, ${words}, and of what its cells hold`,
  "read-as-name": ({ header, field }: Words<"header" | "field">) =>
    `read as ${field} because nothing else names the tests, and “${header}” has another text for each`,
  "read-as-kept": ({ field }: Words<"field">) => `read as ${field} because the setup says so`,
  "could-be-several": ({ header, fields }: Words<"header" | "fields">) =>
    `“${header}” can be read as more than one thing: ${fields}. Say which it is.`,
  "columns-alike": ({ header, others, field }: Words<"header" | "others" | "field">) =>
    `“${header}” and ${others} could both be ${field}. Say which of them it is.`,
  "not-said-outright": ({ header, fields }: Words<"header" | "fields">) =>
    `“${header}” may be ${fields}, but does not say so outright. Say what it is.`,
  "cells-hold-other": ({ header, fields }: Words<"header" | "fields">) =>
    `the words of “${header}” say ${fields}, but its cells hold something else. Say what it is.`,
  "another-is-nearer": ({ header, field, other }: Words<"header" | "field" | "other">) =>
    `“${header}” is not read as ${field}, because “${other}” says so more plainly`,
  "nothing-known": ({ header }: Words<"header">) =>
    `the words of “${header}” say nothing that is known here`,
  "no-header": "the column has no header",
  "holds-nothing": "the column holds nothing",
  "not-ours": ({ header, what }: Words<"header" | "what">) => `“${header}” is not read: ${what}`,
  "not-ours-kept": "not read, because the setup says so",
} as const;
