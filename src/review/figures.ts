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
  if ("say" in value) return value.say;
  return ("all" in value ? value.all : value.either).map(inAnyLanguage).join(", ");
}
