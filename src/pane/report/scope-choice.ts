import { writtenDay } from "../../measure/spreadsheet-day";
import { say } from "../../messages/pane-catalogue";
import { choice } from "../kit/choice";
import { rowAt, type CheckedArea } from "../state/checked-area";
import type { PaneStore } from "../state/pane-state";
import { daysOf, weeksOf, type ReportScope } from "./report-scope";

/** So many days and weeks are offered, the last ones. */
const MOST = 400;

/** The choice of the tests that a report is of. */
export interface ScopeChoice {
  readonly view: HTMLElement;
  /** Offers what the checked tests give. */
  offer(checked: CheckedArea): void;
  /** What is chosen; `undefined` where it is the test under the cursor and there is none. */
  chosen(checked: CheckedArea): ReportScope | undefined;
}

export function scopeChoice(store: PaneStore, onChange: () => void): ScopeChoice {
  const scopes = choice<string>(say("report-scope"), onChange);
  return {
    view: scopes.view,
    offer({ result }) {
      const days = daysOf(result).slice(-MOST);
      const weeks = weeksOf(result).slice(-MOST);
      scopes.offer([
        ["all", say("report-scope-all")],
        ["test", say("report-scope-test")],
        ...weeks.map(
          (from) =>
            [
              `week ${from}`,
              say("report-scope-week", { from: writtenDay(from), to: writtenDay(from + 6) }),
            ] as const,
        ),
        ...days.map(
          (day) => [`day ${day}`, say("report-scope-day", { day: writtenDay(day) })] as const,
        ),
      ]);
    },
    chosen(checked) {
      const [kind, number] = scopes.value().split(" ");
      if (kind === "day") return { kind, day: Number(number) };
      if (kind === "week") return { kind, monday: Number(number) };
      if (kind !== "test") return { kind: "all" };
      const { cursor } = store.get();
      const test = cursor && rowAt(checked, cursor);
      return test && test.state !== "" ? { kind: "test", record: test.record } : undefined;
    },
  };
}
