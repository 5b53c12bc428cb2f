import { say } from "../../messages/pane-catalogue";
import { element } from "../kit/element";
import type { PaneStore } from "../state/pane-state";
import { DECIDED_AS, reviewOf, type DecidedAs } from "../state/review/review-of";

/** How many findings are open, accepted and corrected; a press hides them or shows them again. */
export function decisionFilter(store: PaneStore): HTMLElement {
  const filters = DECIDED_AS.map((kind) => filterButton(store, kind));
  const show = () => {
    const { checked, review } = store.get();
    if (!checked) return;
    const { counts } = reviewOf(checked, review);
    DECIDED_AS.forEach((kind, i) => filters[i]!.show(counts[kind]));
  };
  for (const part of ["checked", "review"] as const) store.watch((state) => state[part], show);
  return element(
    "div",
    { class: "filters", role: "group", "aria-label": say("review-filter") },
    ...filters.map(({ view }) => view),
  );
}

function filterButton(store: PaneStore, kind: DecidedAs) {
  const number = element("span", { class: "filter-count" });
  const label = say(`word-${kind}`);
  const view = element("button", { type: "button", class: "filter" }, label, " ", number);
  view.addEventListener("click", () => {
    const decided = new Set(store.get().decided);
    if (!decided.delete(kind)) decided.add(kind);
    store.set({ decided });
  });
  store.watch(
    ({ decided }) => decided.has(kind),
    (pressed) => view.setAttribute("aria-pressed", String(pressed)),
  );
  return { view, show: (found: number) => (number.textContent = String(found)) };
}
