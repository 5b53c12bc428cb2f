import { READING_CHANGES, type GridCell, type GridRow } from "../../acceptance/outcome-grid";
import type { WhatIf } from "../../acceptance/what-if";
import { isIssue, issueSentence } from "../../measure/issue";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { badgeWord, shape } from "../kit/badge";
import { element } from "../kit/element";
import { shownChange, shownPercent, typedText } from "../kit/shown-number";

/** What the test would have given with other readings, cups and alcohol, coloured and worded. */
export function outcomeGridView({ grid, verdict }: WhatIf, decimal: DecimalMark): HTMLElement {
  const table = element(
    "table",
    { class: "grid" },
    element("caption", {}, say("grid-title")),
    element(
      "thead",
      {},
      element(
        "tr",
        {},
        element("th", { scope: "col" }, say("grid-reading")),
        ...READING_CHANGES.map((change) =>
          element("th", { scope: "col" }, change === 0 ? "0" : shownChange(change, decimal)),
        ),
      ),
    ),
    element(
      "tbody",
      {},
      ...grid.map((row) =>
        element(
          "tr",
          {},
          element("th", { scope: "row" }, rowName(row, decimal)),
          ...row.cells.map((cell) => outcomeCell(cell, decimal)),
        ),
      ),
    ),
  );
  if (!verdict) return table;
  return element("div", {}, table, element("p", { class: "hint" }, say("grid-key")));
}

function rowName({ differs, steps, test }: GridRow, decimal: DecimalMark): string {
  if (differs === "nothing") return say("grid-as-recorded");
  if (differs === "cups") return say("grid-cups", { cups: test.cups ?? 0 });
  const { amount, unit } = test.alcohol!;
  return say(steps < 0 ? "grid-less-alcohol" : "grid-more-alcohol", {
    amount: typedText(amount, decimal),
    unit,
  });
}

function outcomeCell({ outcome, turned, recorded }: GridCell, decimal: DecimalMark): HTMLElement {
  if (isIssue(outcome)) {
    const reason = issueSentence(outcome);
    return element(
      "td",
      { class: "cannot", title: reason },
      element("span", { "aria-hidden": "true" }, "–"),
      element("span", { class: "for-ears" }, reason),
    );
  }
  const { air, verdict } = outcome;
  const looks = [verdict, turned && "turned", recorded && "recorded"].filter(Boolean).join(" ");
  return element(
    "td",
    { class: looks || undefined },
    element(
      "span",
      { class: "grid-air" },
      shownPercent(air, decimal),
      ...(verdict ? [shape(verdict)] : []),
    ),
    ...(verdict ? [element("span", { class: "grid-word" }, badgeWord(verdict))] : []),
  );
}
