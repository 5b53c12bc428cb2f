import { WEIGHTS, type Weight } from "../../fieldsheet/finding";
import { say } from "../../messages/pane-catalogue";
import { badge, badgeWord, shape, type BadgeKind } from "../kit/badge";
import { element } from "../kit/element";
import { countsOf, STATES, VERDICTS } from "../state/counts";
import type { PaneStore } from "../state/pane-state";

/** How many tests there are of each kind. */
export function testCounts(store: PaneStore): HTMLElement {
  const heading = element("h2");
  const states = element("dl", { class: "counts" });
  const verdicts = element("dl", { class: "counts" });
  const nothing = element("p", { class: "nothing-compared" }, say("pane-nothing-compared"));
  const compared = element(
    "div",
    {},
    element("h3", {}, say("pane-against-specification")),
    verdicts,
  );
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      if (!checked) return;
      const counts = countsOf(checked.result);
      heading.textContent = say("pane-tests-counted", { tests: counts.tests });
      states.replaceChildren(...STATES.map((state) => count(state, counts.states[state])));
      verdicts.replaceChildren(
        ...VERDICTS.map((verdict) => count(verdict, counts.verdicts[verdict])),
      );
      nothing.hidden = !checked.result.notLookedAt.some((what) => what.startsWith("limits"));
      compared.hidden = VERDICTS.every((verdict) => counts.verdicts[verdict] === 0);
    },
  );
  return element("div", { class: "count-block" }, heading, states, compared, nothing);
}

/** How many findings there are of each weight; a press hides them or shows them again. */
export function findingCounts(store: PaneStore): HTMLElement {
  const filters = WEIGHTS.map((weight) => filterButton(store, weight));
  store.watch(
    ({ checked }) => checked,
    (checked) => {
      if (!checked) return;
      const { weights } = countsOf(checked.result);
      WEIGHTS.forEach((weight, i) => filters[i]!.show(weights[weight]));
    },
  );
  return element(
    "div",
    { class: "filters", role: "group", "aria-label": say("pane-filter") },
    ...filters.map(({ view }) => view),
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
