import { acceptanceMessages } from "../../messages/english/acceptance";
import type { RunRule } from "./run-rules";

/** Run rules in words, as one sentence; "" for none. */
export function runRuleWords(rules: readonly RunRule[]): string {
  const words = rules.map((rule) => acceptanceMessages[rule]).join("; ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}
