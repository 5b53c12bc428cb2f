import { quoted } from "../../measure/cell-value";
import { issue, type Issue } from "../../measure/issue";

/** How a result leads to a decision about the load. */
export type DispositionRule = "check test" | "preliminary sample" | "averaged";

/** A rule of decision, as it is named to the function. */
export interface NamedRule {
  readonly name: DispositionRule;
  /** How people write its name. */
  readonly written: RegExp;
}

/** Every rule that is held; the first is taken where none is named. */
export const DISPOSITION_RULES: readonly NamedRule[] = [
  // ASTM C94 (C94-98, 16.6, as trade articles and a trade question and answer quote it): another portion of the
  // same sample is tested at once, and a second failure fails the concrete; its two results are not averaged.
  {
    name: "check test",
    written: /check|c[\s-]?94/i,
  },
  // ASTM C94 (C94-98, 7.3, as a trade article on air-entraining admixture at the jobsite tells it; rationale of
  // the 2021–22 revision): below the limit the producer may adjust the load, with at least 30 revolutions at
  // mixing speed, and an acceptance sample decides.
  {
    name: "preliminary sample",
    written: /prelim|adjust/i,
  },
  // UFGS 03300A (older text): a result that reaches an action limit is tested again at once, and the average of
  // the two counts.
  {
    name: "averaged",
    written: /averag|mean|ufgs/i,
  },
];

/** The rule that a text names. Gives the issue `disposition-rule-unknown`, which lists them. */
export function dispositionRuleNamed(text: string): DispositionRule | Issue {
  const found = DISPOSITION_RULES.find(({ written }) => written.test(text));
  if (found) return found.name;
  const names = DISPOSITION_RULES.map(({ name }) => name).join(", ");
  return issue("disposition-rule-unknown", { value: quoted(text), names });
}
