import type { Value, Values } from "../messages/sentence";

/** The numbers that a finding was said with, by name, in an order that does not depend on the code. */
export function figuresOf(values: Values): string {
  return Object.keys(values)
    .sort()
    .map((name) => `${name} ${inAnyLanguage(values[name]!)}`)
    .join("; ");
}

/** Words of the catalogue by their id, so that a decision is found again in another language. */
function inAnyLanguage(value: Value): string {
  if (typeof value !== "object") return `${value}`;
  if ("figure" in value) return value.figure.toFixed(value.places);
  if ("say" in value) return wordsOf(value.say, value.values);
  return ("all" in value ? value.all : value.either).map(inAnyLanguage).join(", ");
}

function wordsOf(id: string, values: Values = {}): string {
  return [id, ...Object.values(values).map(inAnyLanguage)].join(" ");
}
