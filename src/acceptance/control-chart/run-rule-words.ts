import { acceptanceMessages } from "../../messages/english/acceptance";
import type { RunRule } from "./run-rules";

/**
 * Run rules in words, as one sentence; "" for none.
 *
 * @param inWords How each is said; as a function gives it, the same in every language, unless told.
 */
export function runRuleWords(
  rules: readonly RunRule[],
  inWords: (rule: RunRule) => string = (rule) => acceptanceMessages[rule],
): string {
  const words = rules.map(inWords).join("; ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
