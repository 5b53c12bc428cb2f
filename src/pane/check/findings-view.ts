import type { Finding } from "../../fieldsheet/finding";
import { say } from "../../messages/pane-catalogue";
import { choice } from "../kit/choice";
import { button, element } from "../kit/element";
import { virtualList } from "../kit/virtual-list";
import type { CheckedArea } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { findingGroups, type FindingGroup, type FindingGrouping } from "../state/finding-groups";
import { reviewOf } from "../state/review/review-of";
import { findingCounts } from "./counts-view";
import { decisionFilter } from "./decision-filter";
import { findingCard, groupHeading } from "./finding-card";

/** What was found, a card each, together by test or by rule; each leads to its cell. */
export function findingsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const list = virtualList("fresh-findings");
  const heading = element("h2", { id: "fresh-findings-title" });
  const none = element("p", { class: "hint" });
  const together = choice<FindingGrouping>(say("pane-group-by"), () =>
    store.set({ grouping: together.value() }),
  );
  together.offer([
    ["test", say("pane-group-by-test")],
    ["rule", say("pane-group-by-rule")],
  ]);
  const sorted = choice<"row" | "weight">(say("pane-sort-by"), () =>
    store.set({ order: sorted.value() }),
  );
  sorted.offer([
    ["row", say("pane-sort-by-row")],
    ["weight", say("pane-sort-by-weight")],
  ]);
  const copy = button(say("pane-copy"), () => void commands.copyFindings(store.get().shown));
  const tools = element("div", { class: "inputs" }, together.view, sorted.view);
  let before: CheckedArea | undefined;

  const show = () => {
    const { checked, shown, grouping, order, fresh, review, decided } = store.get();
    if (!checked) return;
    const { findings } = checked.result;
    heading.textContent = say("pane-findings-counted", { findings: findings.length });
    const { of } = reviewOf(checked, review);
    const listed = findings.filter(
      (finding) => shown.has(finding.weight) && decided.has(of(finding).decision),
    );
    none.hidden = listed.length > 0;
    none.textContent = say(findings.length > 0 ? "review-all-filtered" : "pane-nothing-found");
    list.view.hidden = copy.hidden = listed.length === 0;
    tools.hidden = findings.length < 2;
    const items = findingGroups(listed, grouping, order).flatMap((group) =>
      group.map((finding, i): Item => ({ finding, heads: i === 0 ? group : undefined })),
    );
    const stay = before !== undefined && sameTable(before, checked);
    before = checked;
    list.show(
      {
        label: say("pane-findings"),
        count: items.length,
        item: (i) => {
          const { finding, heads } = items[i]!;
          const card = findingCard(finding, checked, grouping, fresh, of(finding));
          if (!heads) return card;
          const over = groupHeading(heads, checked, grouping);
          return element("div", {}, element("div", { class: "finding-group" }, over), " ", card);
        },
        open(i) {
          const { finding } = items[i]!;
          store.set({ chosen: finding });
          void commands.goTo(finding);
        },
      },
      stay,
    );
  };
  for (const part of [
    "checked",
    "shown",
    "grouping",
    "order",
    "fresh",
    "review",
    "decided",
  ] as const)
    store.watch((state) => state[part], show);

  return element(
    "section",
    { "aria-labelledby": "fresh-findings-title" },
    heading,
    findingCounts(store),
    decisionFilter(store),
    none,
    tools,
    list.view,
    element("div", { class: "actions" }, copy),
    element("p", { class: "hint" }, say("pane-findings-keys")),
  );
}

/** A finding in the list, and the group over which it stands first. */
interface Item {
  readonly finding: Finding;
  readonly heads: FindingGroup | undefined;
}

function sameTable(one: CheckedArea, other: CheckedArea): boolean {
  const [a, b] = [one.read.area, other.read.area];
  return a.sheetId === b.sheetId && a.row === b.row && a.column === b.column;
}
