import type { Words } from "../messages/sentence";

/** The numbers that a finding was said with, by name, in an order that does not depend on the code. */
export function figuresOf(values: Words): string {
  return Object.keys(values)
    .sort()
    .map((name) => `${name} ${values[name]}`)
    .join("; ");
}
