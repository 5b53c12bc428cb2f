import { ruleNames } from "../../messages/english/rule-names";
import { inLine } from "../../messages/pane-catalogue";

/** What a rule is called. A review may name one that is not there any more: ids are plain words. */
export function ruleName(rule: string): string {
  const id = `rule-${rule}`;
  return id in ruleNames ? inLine(id as keyof typeof ruleNames) : rule.replaceAll("-", " ");
}
