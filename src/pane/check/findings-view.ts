import { findingSentence } from "../../fieldsheet/finding-sentence";
import type { Finding } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { badge } from "../kit/badge";
import type { CheckedArea } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import { element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";
import { whereOf } from "../state/where-of";
import { virtualList } from "../kit/virtual-list";

/** The list of findings; each leads to its cell. */
export function findingsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const list = virtualList("fresh-findings");
  const none = element("p", { class: "hint" });
  let before: CheckedArea | undefined;
  const show = () => {
    const { checked, shown } = store.get();
    if (!checked) return;
    const { findings } = checked.result;
    const listed = findings.filter(({ weight }) => shown.has(weight));
    none.hidden = listed.length > 0;
    none.textContent = say(findings.length > 0 ? "pane-all-filtered" : "pane-nothing-found");
    list.view.hidden = listed.length === 0;
    const stay = before !== undefined && sameTable(before, checked);
    before = checked;
    list.show(
      {
        label: say("pane-findings"),
        count: listed.length,
        item: (i) => findingItem(listed[i]!, checked),
        open: (i) => void commands.goTo(listed[i]!),
      },
      stay,
    );
  };
  store.watch(({ checked }) => checked, show);
  store.watch(({ shown }) => shown, show);
  return element(
    "section",
    { "aria-labelledby": "fresh-findings-title" },
    element("h2", { id: "fresh-findings-title" }, say("pane-findings")),
    none,
    list.view,
    element("p", { class: "hint" }, say("pane-findings-keys")),
  );
}

function findingItem(finding: Finding, checked: CheckedArea): DocumentFragment {
  const { rows, columns } = checked.result;
  const sample = finding.row === null ? "" : rows[finding.row]!.sample;
  const item = document.createDocumentFragment();
  item.append(
    element(
      "span",
      { class: "finding-head" },
      badge(finding.weight),
      " ",
      element("span", { class: "finding-cell" }, whereOf(finding, checked)),
      " ",
      element("span", { class: "finding-sample" }, sample),
    ),
    " ",
    element("span", { class: "finding-sentence" }, findingSentence(finding, columns)),
  );
  return item;
}

function sameTable(one: CheckedArea, other: CheckedArea): boolean {
  const [a, b] = [one.read.area, other.read.area];
  return a.sheetId === b.sheetId && a.row === b.row && a.column === b.column;
}
