import type { Finding } from "../../../fieldsheet/finding";
import type { SheetHost } from "../../../hosts/sheet-host";
import { Problem } from "../../../measure/problem";
import { say } from "../../../messages/pane-catalogue";
import { linesToAdd, notYetWritten, type NewEntry } from "../../../review/lines-to-add";
import { readReview } from "../../../review/read-review";
import { REVIEW_SHEET, type Decision, type Subject } from "../../../review/review-entry";
import { timeText } from "../../../review/time-of-entry";
import type { CheckedArea } from "../checked-area";
import type { Marking } from "../marking";
import type { Job } from "../one-at-a-time";
import type { PaneStore } from "../pane-state";
import { sentenceOfFinding } from "../sentence-of-finding";
import { foundAgain, subjectOf } from "./finding-on-sheet";
import { correctionKey, type NoticedCorrection } from "./noticed-corrections";
import { reviewFrom } from "./review-on-sheet";

/** What a user can decide of findings. Each gives what there is to say about it. */
export interface Reviewing {
  decide(
    findings: readonly Finding[],
    decision: "accepted" | "open",
    reason: string,
    job: Job,
  ): Promise<string>;
  /** Records corrections that were noticed. */
  corrected(noticed: readonly NoticedCorrection[]): Promise<string>;
  /** Records that the checked sheet had another name before. */
  renamed(before: string): Promise<string>;
}

export function reviewing(
  store: PaneStore,
  host: SheetHost,
  marks: Pick<Marking, "upToDate">,
  now: () => Date = () => new Date(),
): Reviewing {
  function initials(): string {
    const typed = store.get().initials.trim();
    if (typed === "") throw new Problem("review-initials-missing");
    return typed;
  }

  /** Adds lines to the review, and keeps what stands there then. */
  async function write(entries: readonly NewEntry[]): Promise<number> {
    let added = 0;
    const read = await host.addLines(REVIEW_SHEET, (there) => {
      const review = readReview(there?.values ?? []);
      const written = review instanceof Problem ? [] : review.entries;
      const lines = notYetWritten(entries, written);
      added = lines.length;
      return linesToAdd(lines, there?.values);
    });
    const { sheetName } = store.get().checked!.read.area;
    store.set({ review: await reviewFrom(read, host, sheetName) });
    return added;
  }

  const recorded = (count: number) =>
    count === 0
      ? say("review-recorded-before", { sheet: REVIEW_SHEET })
      : say("review-recorded", { count, sheet: REVIEW_SHEET });

  const entry = (subject: Subject, finding: string, decision: Decision): NewEntry => ({
    ...subject,
    ...{ finding, decision, time: timeText(now()), initials: initials() },
    ...{ reason: "", oldValue: "", newValue: "" },
  });

  return {
    async decide(findings, decision, reason, job) {
      initials();
      if (decision === "accepted" && reason.trim() === "")
        throw new Problem("review-reason-missing");
      const before = store.get().checked!;
      const subjects = findings.map((finding) => subjectOf(finding, before));
      const { checked, said } = await marks.upToDate(before, job);
      const still = checked === before ? findings : findAgain(subjects, checked);
      const entries = still.map((finding) => ({
        ...entry(subjectOf(finding, checked), sentenceOfFinding(finding, checked), decision),
        reason: reason.trim(),
      }));
      return [...said, recorded(await write(entries))].join(" ");
    },
    async corrected(noticed) {
      const entries = noticed.map(({ subject, finding, oldValue, newValue }) => ({
        ...entry(subject, finding, "corrected"),
        ...{ oldValue, newValue },
      }));
      const count = await write(entries);
      const done = new Set(noticed.map(correctionKey));
      const { corrections } = store.get();
      store.set({ corrections: corrections.filter((one) => !done.has(correctionKey(one))) });
      return recorded(count);
    },
    async renamed(before) {
      const sheet = store.get().checked!.read.area.sheetName;
      const nothing = { sample: "", place: "", rule: "", column: "", value: "", figures: "" };
      await write([{ ...entry({ sheet, ...nothing }, "", "renamed"), oldValue: before }]);
      return say("review-renamed", { name: before, sheet });
    },
  };
}

/** The same findings in the sheet as it is now. @throws Problem where one of them is not there any more. */
function findAgain(subjects: readonly Subject[], checked: CheckedArea): Finding[] {
  return foundAgain(subjects, checked).map((again) => {
    if (!again) throw new Problem("review-finding-gone");
    return again;
  });
}
