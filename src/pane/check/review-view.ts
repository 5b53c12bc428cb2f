import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import { problemSentence } from "../kit/problem-sentence";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { correctedView, correctionsView } from "./corrections-view";
import { reviewForm } from "./review-form";

/** Where findings are decided, and what stands in the way of the review that the workbook holds. */
export function reviewView(store: PaneStore, commands: PaneCommands): HTMLElement {
  return element(
    "section",
    { class: "review", "aria-labelledby": "fresh-review-title" },
    element("h2", { id: "fresh-review-title" }, say("review-title")),
    problemsView(store),
    otherSheetsView(store, commands),
    correctionsView(store, commands),
    reviewForm(store, commands),
    correctedView(store),
  );
}

/** What could not be taken of the review, one sentence a line. */
function problemsView(store: PaneStore): HTMLElement {
  const summary = element("summary");
  const lines = element("ul");
  const several = element("details", {}, summary, lines);
  const one = element("p", { class: "problem" });
  store.watch(
    ({ review }) => review.problems,
    (problems) => {
      one.hidden = problems.length !== 1;
      several.hidden = problems.length < 2;
      one.textContent = problems.length === 1 ? problemSentence(problems[0]) : "";
      summary.textContent = say("review-lines-not-taken", { count: problems.length });
      lines.replaceChildren(
        ...problems.map((problem) => element("li", {}, problemSentence(problem))),
      );
    },
  );
  return element("div", {}, one, several);
}

/** Decisions about sheets that are not there: the checked one may have been called so. */
function otherSheetsView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const view = element("div");
  store.watch(
    ({ review }) => review.otherSheets,
    (sheets) =>
      view.replaceChildren(
        ...sheets.map(({ name, count }) =>
          element(
            "p",
            { class: "hint" },
            say("review-other-sheet", { name, count }),
            " ",
            button(say("review-was-called", { name }), () => void commands.recordRenamed(name)),
          ),
        ),
      ),
  );
  return view;
}
