import { whatIf } from "../../acceptance/what-if";
import type { RowResult } from "../../fieldsheet/check-result";
import { Problem } from "../../measure/problem";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { rowAt } from "../state/checked-area";
import { typedNumber } from "../state/typed-limits";
import type { PaneCommands } from "../state/commands";
import { button, element } from "../kit/element";
import { numberInput } from "../kit/number-input";
import { outcomeGridView } from "./outcome-grid-view";
import type { PaneState, PaneStore } from "../state/pane-state";
import { problemSentence } from "../kit/problem-sentence";
import { stepsView } from "./steps-view";
import { inputsOfRow, NO_INPUTS, TEST_INPUTS, testOfInputs, type TestInputs } from "./test-inputs";
import { turningPointsView } from "./turning-points-view";
import { verdictView } from "./verdict-view";

/** The test in the row under the cursor, looked at from all sides. Nothing here changes the sheet. */
export function testView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const title = element("h2", { id: "fresh-test-title" });
  const remark = element("p", { class: "hint" });
  const problem = element("p", { class: "problem", "aria-live": "polite" });
  const outcome = element("div");
  let typed: TestInputs = NO_INPUTS;

  const render = () => {
    problem.textContent = "";
    outcome.replaceChildren();
    const decimal = decimalOf(store.get());
    try {
      const read = testOfInputs(typed, decimal);
      const deviation = typedNumber(store.get().deviation, say("test-input-deviation"), decimal);
      if (!read) return;
      const looked = Problem.unless(whatIf(read.test, { deviation, check: read.check }));
      const row = rowUnderCursor(store.get());
      outcome.append(
        verdictView(looked, decimal, row === undefined || row.test === "valid"),
        stepsView(looked, decimal),
        outcomeGridView(looked, decimal),
        turningPointsView(looked, decimal),
      );
    } catch (error) {
      problem.textContent = problemSentence(error);
    }
  };
  const inputs = TEST_INPUTS.map((name) => ({
    name,
    field: numberInput(say(`test-input-${name}`), (text) => {
      typed = { ...typed, [name]: text };
      render();
    }),
  }));
  const deviation = numberInput(say("test-input-deviation"), (text) => {
    store.set({ deviation: text });
    void commands.keepSettings();
  });
  const fill = (row: RowResult | undefined) => {
    const { checked } = store.get();
    title.textContent = titleOf(row, store.get());
    remark.textContent = remarkOn(row, store.get());
    typed = row && checked ? inputsOfRow(row, checked.result, checked.decimal) : NO_INPUTS;
    for (const { name, field } of inputs) field.show(typed[name]);
    render();
  };
  store.watch(rowUnderCursor, fill);
  store.watch(
    (state) => state.deviation,
    (text) => {
      deviation.show(text);
      render();
    },
  );

  return element(
    "section",
    { "aria-labelledby": "fresh-test-title" },
    title,
    remark,
    element(
      "fieldset",
      { class: "inputs" },
      element("legend", {}, say("test-inputs")),
      ...inputs.map(({ field }) => field.view),
      deviation.view,
      button(say("test-reset"), () => fill(rowUnderCursor(store.get()))),
    ),
    element("p", { class: "hint" }, say("test-changes-nothing")),
    problem,
    outcome,
  );
}

function rowUnderCursor({ checked, cursor }: PaneState): RowResult | undefined {
  const row = checked && cursor && rowAt(checked, cursor);
  return row?.test === "" ? undefined : row;
}

function decimalOf({ checked }: PaneState): DecimalMark {
  return checked?.decimal ?? ".";
}

function titleOf(row: RowResult | undefined, { cursor }: PaneState): string {
  if (!row || !cursor) return say("test-title-none");
  const where = { row: cursor.row + 1, sample: row.sample };
  return say(row.sample ? "test-title-sample" : "test-title", where);
}

function remarkOn(row: RowResult | undefined, { checked }: PaneState): string {
  if (!row) return say(checked ? "test-select-row" : "test-check-first");
  if (row.test === "void") return say("test-is-void");
  const { finalReading, result } = row.judged;
  if (finalReading === undefined) return say("test-no-final-reading");
  return result === undefined ? say("test-no-result") : "";
}
