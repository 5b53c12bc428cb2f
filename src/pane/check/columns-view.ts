import { FIELDS, type FieldId } from "../../reading/fields";
import { columnLetters } from "../../hosts/cell-address";
import { isBlank, shownValue } from "../../measure/cell-value";
import { say } from "../../messages/pane-catalogue";
import type { CheckedArea } from "../state/checked-area";
import { element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";

/** Which columns were recognised as what, and which headers were not. */
export function columnsView(store: PaneStore): HTMLElement {
  const summary = element("summary");
  const body = element("div");
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      if (!checked) return;
      const { recognised, others } = columnsOf(checked);
      summary.textContent = say("pane-columns", {
        recognised: recognised.length,
        others: others.length,
      });
      body.replaceChildren(columnsTable(recognised), othersList(others));
    },
  );
  return element("details", { class: "columns" }, summary, body);
}

interface ColumnLine {
  readonly letters: string;
  readonly header: string;
  readonly field?: FieldId;
}

/** Every column with a header, or label of a form with its cell: those that were recognised, and the others. */
export function columnsOf({ table, result, read }: CheckedArea): {
  readonly recognised: readonly ColumnLine[];
  readonly others: readonly ColumnLine[];
} {
  const fieldAt = new Map(
    Object.entries(result.columns).map(([field, { index }]) => [index, field as FieldId]),
  );
  const { labels } = result.reading;
  const letters = (index: number) => {
    const label = labels?.[index];
    const name = columnLetters(read.area.column + (label?.column ?? index));
    return label ? `${name}${read.area.row + label.row + 1}` : name;
  };
  const lines = table.headers.flatMap((header, index): ColumnLine[] =>
    isBlank(header)
      ? []
      : [
          {
            letters: letters(index),
            header: shownValue(header),
            field: fieldAt.get(index),
          },
        ],
  );
  return {
    recognised: lines.filter(({ field }) => field !== undefined),
    others: lines.filter(({ field }) => field === undefined),
  };
}

function columnsTable(lines: readonly ColumnLine[]): HTMLElement {
  const heads = ["pane-column", "pane-column-header", "pane-column-read-as"] as const;
  return element(
    "table",
    {},
    element(
      "thead",
      {},
      element("tr", {}, ...heads.map((id) => element("th", { scope: "col" }, say(id)))),
    ),
    element(
      "tbody",
      {},
      ...lines.map(({ letters, header, field }) =>
        element(
          "tr",
          {},
          element("td", {}, letters),
          element("td", {}, header),
          element("td", {}, FIELDS[field!].label),
        ),
      ),
    ),
  );
}

function othersList(lines: readonly ColumnLine[]): HTMLElement {
  if (lines.length === 0) return element("p", { class: "hint" }, say("pane-every-column-known"));
  const names = lines.map(({ letters, header }) => `${header} (${letters})`).join(", ");
  return element("p", { class: "hint" }, say("pane-columns-unknown", { names }));
}
