import { findingSentence } from "../fieldsheet/finding-sentence";
import type { Finding } from "../fieldsheet/rule";
import { blockAddress } from "../hosts/cell-address";
import { say } from "../messages/catalogue";
import { badge } from "./badge";
import { placeOf, type CheckedArea } from "./checked-area";
import type { PaneCommands } from "./commands";
import { element } from "./element";
import type { PaneStore } from "./pane-state";
import { virtualList } from "./virtual-list";

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

/** "C7" for a cell, "row 7" for a row as a whole, "whole sheet" for the sheet. */
export function whereOf(finding: Finding, checked: CheckedArea): string {
  if (finding.row === null) return say("pane-whole-sheet");
  const place = placeOf(checked, finding);
  if (finding.column === null) return say("pane-row", { row: place.row + 1 });
  return blockAddress({ ...place, rows: 1, columns: 1 });
}

function sameTable(one: CheckedArea, other: CheckedArea): boolean {
  const [a, b] = [one.read.area, other.read.area];
  return a.sheetId === b.sheetId && a.row === b.row && a.column === b.column;
}
