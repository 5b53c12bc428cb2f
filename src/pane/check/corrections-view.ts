import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { correctedSentence, correctionSentence } from "../state/review/decision-sentence";
import { reviewOf } from "../state/review/review-of";

/** So many are listed; all of them can be recorded at once. */
const MOST_LISTED = 20;

/** Corrections that were noticed and may be recorded. */
export function correctionsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const heading = element("h3", { id: "fresh-corrections-title" });
  const list = element("ul", { class: "corrections" });
  const all = button("", () => void commands.recordCorrections(store.get().corrections));
  const view = element(
    "section",
    { "aria-labelledby": "fresh-corrections-title" },
    heading,
    element("p", { class: "hint" }, say("review-corrections-hint")),
    list,
    element("div", { class: "actions" }, all),
  );
  store.watch(
    ({ corrections }) => corrections,
    (corrections) => {
      view.hidden = corrections.length === 0;
      all.hidden = corrections.length < 2;
      all.textContent = say("review-record-all", { count: corrections.length });
      heading.textContent = say("review-corrections", { count: corrections.length });
      list.replaceChildren(
        ...corrections.slice(0, MOST_LISTED).map((one) => {
          const { oldValue, newValue } = one;
          const sentence = correctionSentence({ ...one.subject, oldValue, newValue });
          return element(
            "li",
            {},
            element("span", {}, sentence),
            element(
              "div",
              { class: "actions" },
              button(say("review-record"), () => void commands.recordCorrections([one])),
              button(say("review-no-correction"), () => commands.dismissCorrection(one)),
            ),
          );
        }),
      );
    },
  );
  return view;
}

/** What was corrected and written down. */
export function correctedView(store: PaneStore): HTMLElement {
  const summary = element("summary");
  const list = element("ul");
  const view = element("details", { class: "corrected" }, summary, list);
  const show = () => {
    const { checked, review, decided } = store.get();
    const corrected = checked ? reviewOf(checked, review).corrected : [];
    view.hidden = corrected.length === 0 || !decided.has("corrected");
    summary.textContent = say("review-corrected-before", { count: corrected.length });
    list.replaceChildren(...corrected.map((entry) => element("li", {}, correctedSentence(entry))));
  };
  for (const part of ["checked", "review", "decided"] as const)
    store.watch((state) => state[part], show);
  return view;
}
