import { Problem } from "../measure/problem";

/** Whether one operator made both tests or several did, each with his own equipment. */
export type Operators = "one" | "several";

const SPELLINGS: Readonly<Record<Operators, readonly string[]>> = {
  one: ["one", "1", "single", "same", "one operator", "single operator", "single-operator"],
  several: ["several", "2", "two", "multi", "multiple", "several operators", "multi-operator"],
};

/** The operators that a word or a count stands for. @throws Problem `operators-unknown`. */
export function operatorsNamed(word: string): Operators {
  const written = word.trim().toLowerCase();
  for (const operators of ["one", "several"] as const) {
    if (SPELLINGS[operators].includes(written)) return operators;
  }
  throw new Problem("operators-unknown", { value: word });
}
