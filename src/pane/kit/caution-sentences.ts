import { say } from "../../messages/pane-catalogue";

const CAUTIONS = ["caustic", "flammable", "lifting", "deferral"] as const;

/** What everyone at the test must know, and what the results do not replace. */
export function cautionSentences(): string[] {
  return CAUTIONS.map((caution) => say(`caution-${caution}`));
}
