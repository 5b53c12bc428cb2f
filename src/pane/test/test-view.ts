import { whatIf } from "../../acceptance/what-if";
import type { TestResult } from "../../fieldsheet/test-result";
import { notLookedAtSentence } from "../../fieldsheet/not-looked-at";
import type { DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import { numberInput } from "../kit/number-input";
import { problemSentence } from "../kit/problem-sentence";
import { rowAt } from "../state/checked-area";
import type { PaneCommands } from "../state/commands";
import type { PaneState, PaneStore } from "../state/pane-state";
import { typedNumber } from "../state/typed-limits";
import { outcomeGridView } from "./outcome-grid-view";
import { readingChoice } from "./reading-choice";
import { stepsView } from "./steps-view";
import {
  complaintAbout,
  inputsOfRow,
  NO_INPUTS,
  TEST_INPUTS,
  testOfInputs,
  type TestInputs,
} from "./test-inputs";
import { testStateView } from "./test-state-view";
import { turningPointsView } from "./turning-points-view";
import { verdictView } from "./verdict-view";

/**
 * The test in the row under the cursor, looked at from all sides: its state and result, the way there,
 * and what other numbers would give. Nothing here changes the sheet.
 */
export function testView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const title = element("h2", { id: "fresh-test-title" });
  const remark = element("p", { class: "hint" });
  const problem = element("p", { class: "problem", "aria-live": "polite" });
  const state = element("div");
  const result = element("div");
  const reading = element("div");
  const around = element("div");
  const unseen = element("p", { class: "hint" });
  let typed: TestInputs = NO_INPUTS;
  let recorded: TestInputs = NO_INPUTS;

  const render = () => {
    problem.textContent = "";
    result.replaceChildren();
    around.replaceChildren();
    const decimal = decimalOf(store.get());
    let wrong = false;
    for (const { name, field } of inputs) {
      const complaint = complaintAbout(name, typed[name], decimal);
      field.complain(complaint);
      wrong ||= complaint !== "";
    }
    deviation.complain(complaintAbout("check", store.get().deviation, decimal));
    if (wrong) return;
    try {
      const row = rowUnderCursor(store.get());
      const read = testOfInputs(typed, decimal, (row ?? anyTest(store.get()))?.scaleEnd);
      const own = typedNumber(store.get().deviation, say("test-input-deviation"), decimal);
      if (!read) return;
      const decides = decidesWith(row, typed !== recorded);
      const test = decides ? read.test : { ...read.test, limits: {} };
      const looked = Problem.unless(whatIf(test, { deviation: own, check: read.check }));
      result.append(verdictView(looked, decimal, decides), stepsView(looked, decimal));
      if (decides)
        around.append(outcomeGridView(looked, decimal), turningPointsView(looked, decimal));
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
  const fill = (row: TestResult | undefined) => {
    const { checked } = store.get();
    title.textContent = titleOf(row, store.get());
    remark.textContent = remarkOn(row, store.get());
    recorded = row && checked ? inputsOfRow(row, checked.result, checked.decimal) : NO_INPUTS;
    typed = recorded;
    for (const { name, field } of inputs) field.show(typed[name]);
    const stands = row && checked ? testStateView(row, checked.result) : undefined;
    state.replaceChildren(...(stands ? [stands] : []));
    reading.replaceChildren(...(row ? readingView(row, decimalOf(store.get())) : []));
    unseen.textContent = (row && checked && notLookedAtSentence(checked.result.notLookedAt)) ?? "";
    render();
  };
  store.watch(rowUnderCursor, fill);
  store.watch(
    (now) => now.deviation,
    (text) => {
      deviation.show(text);
      render();
    },
  );
  store.watch((now) => now.decimal, render);

  return element(
    "section",
    { "aria-labelledby": "fresh-test-title" },
    title,
    remark,
    state,
    problem,
    result,
    reading,
    element(
      "fieldset",
      { class: "inputs" },
      element("legend", {}, say("test-inputs")),
      ...inputs.map(({ field }) => field.view),
      deviation.view,
      button(say("test-reset"), () => fill(rowUnderCursor(store.get()))),
    ),
    element("p", { class: "hint" }, say("test-changes-nothing")),
    around,
    unseen,
  );
}

/** A void test decides nothing whatever its numbers are; an incomplete one only with other numbers. */
function decidesWith(row: TestResult | undefined, edited: boolean): boolean {
  return row === undefined || row.state === "valid" || (row.state === "incomplete" && edited);
}

function readingView(test: TestResult, decimal: DecimalMark): HTMLElement[] {
  const sentences = readingChoice(test, decimal);
  if (sentences.length === 0) return [];
  return [element("h3", {}, say("reading-title")), element("p", {}, sentences.join(" "))];
}

function rowUnderCursor({ checked, cursor }: PaneState): TestResult | undefined {
  const row = checked && cursor && rowAt(checked, cursor);
  return row?.state === "" ? undefined : row;
}

/** Every test of a sheet is taken with the same meter scale. */
function anyTest({ checked }: PaneState): TestResult | undefined {
  return checked?.result.results[0];
}

function decimalOf({ checked, decimal }: PaneState): DecimalMark {
  return checked?.decimal ?? decimal;
}

function titleOf(row: TestResult | undefined, { cursor }: PaneState): string {
  if (!row || !cursor) return say("test-title-none");
  const { sample } = row;
  return sample
    ? say("test-title-sample", { row: cursor.row + 1, sample })
    : say("test-title", { row: cursor.row + 1 });
}

function remarkOn(row: TestResult | undefined, { checked }: PaneState): string {
  if (!row) return say(checked ? "test-select-row" : "test-check-first");
  return row.finalReading === undefined ? say("test-no-final-reading") : "";
}
