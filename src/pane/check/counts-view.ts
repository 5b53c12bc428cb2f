import { WEIGHTS, type Weight } from "../../fieldsheet/rule";
import { say } from "../../messages/pane-catalogue";
import { badge, badgeWord, shape, type BadgeKind } from "../kit/badge";
import { countsOf, STATES, VERDICTS } from "../state/counts";
import { element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";

/** How many tests and findings there are of each kind; the findings can be filtered by weight. */
export function countsView(store: PaneStore): HTMLElement {
  const tests = element("dl", { class: "counts" });
  const filters = WEIGHTS.map((weight) => filterButton(store, weight));
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      if (!checked) return;
      const { states, verdicts, weights } = countsOf(checked.result);
      const compared = VERDICTS.some((verdict) => verdicts[verdict] > 0);
      tests.replaceChildren(
        ...STATES.map((state) => count(state, states[state])),
        ...(compared ? VERDICTS.map((verdict) => count(verdict, verdicts[verdict])) : []),
      );
      WEIGHTS.forEach((weight, i) => filters[i]!.show(weights[weight]));
    },
  );
  return element(
    "div",
    { class: "count-block" },
    tests,
    element(
      "div",
      { class: "filters", role: "group", "aria-label": say("pane-filter") },
      ...filters.map(({ view }) => view),
    ),
  );
}

function count(kind: BadgeKind, number: number): HTMLElement {
  return element(
    "div",
    { class: number === 0 ? "count none" : "count" },
    element("dt", {}, badge(kind)),
    element("dd", {}, String(number)),
  );
}

function filterButton(store: PaneStore, weight: Weight) {
  const number = element("span", { class: "filter-count" });
  const view = element(
    "button",
    { type: "button", class: `filter ${weight}` },
    shape(weight),
    badgeWord(weight),
    " ",
    number,
  );
  view.addEventListener("click", () => {
    const shown = new Set(store.get().shown);
    if (!shown.delete(weight)) shown.add(weight);
    store.set({ shown });
  });
  store.watch(
    ({ shown }) => shown.has(weight),
    (pressed) => view.setAttribute("aria-pressed", String(pressed)),
  );
  return { view, show: (found: number) => (number.textContent = String(found)) };
}
