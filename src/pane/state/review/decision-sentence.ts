import { ruleName } from "../../kit/rule-name";
import { say } from "../../../messages/pane-catalogue";
import type { ReviewEntry } from "../../../review/review-entry";
import type { FindingDecided } from "../../../review/reviewed-findings";

/** What has been decided of a finding, by whom and when; "" for one of which nothing was said. */
export function decisionSentence({ decision, entry, reopened }: FindingDecided): string {
  if (reopened) {
    const { time, initials, value } = reopened;
    return say("review-reopened", { time, initials, value: value || say("review-value-blank") });
  }
  if (!entry) return "";
  const { time, initials, reason } = entry;
  if (entry.decision === "corrected") return say("review-stands-again", { time, initials });
  const by = say("review-by", { decision: say(`word-${decision}`), time, initials });
  return reason === "" ? by : say("review-by-with-reason", { by, reason });
}

/** A correction: "S-12, reported air wrong: it was 5.5, it is 5.75". */
export function correctionSentence(of: {
  readonly sample: string;
  readonly place: string;
  readonly rule: string;
  readonly oldValue: string;
  readonly newValue: string;
}): string {
  return say("review-correction", {
    sample: of.sample || of.place,
    rule: ruleName(of.rule),
    from: of.oldValue || say("review-value-blank"),
    to: of.newValue || say("review-value-blank"),
  });
}

/** The same with who wrote it down, and when. */
export function correctedSentence(entry: ReviewEntry): string {
  const { time, initials } = entry;
  const by = say("review-by", { decision: say("word-corrected"), time, initials });
  return say("review-corrected-line", { correction: correctionSentence(entry), by });
}
