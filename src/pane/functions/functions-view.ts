import { inLine, say } from "../../messages/pane-catalogue";
import { speech } from "../../messages/speech";
import { button, element } from "../kit/element";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { findFunctions } from "./find-functions";
import type { FunctionHelp, FunctionHelps } from "./function-help";
import { formulaOf, shownFormula } from "./shown-formula";
import "./functions.css";

/**
 * The help of the worksheet functions: found by name or by a word of the trade, each with its arguments and
 * an example that can be put into the selected cell.
 */
export function functionsView(
  store: PaneStore,
  commands: PaneCommands,
  loading: Promise<FunctionHelps>,
): HTMLElement {
  let functions: readonly FunctionHelp[] = [];
  const input = element("input", { type: "search", autocomplete: "off", spellcheck: "false" });
  const found = element("p", { class: "hint", role: "status" }, say("functions-loading"));
  const list = element("div", { class: "functions" });
  const show = () => {
    if (functions.length === 0) return;
    const shown = findFunctions(functions, input.value);
    const { decimal } = store.get();
    found.textContent =
      shown.length === 0
        ? say("functions-none", { typed: input.value })
        : say("functions-found", { count: shown.length });
    list.replaceChildren(
      ...shown.map((one) => helpOf(one, shownFormula(one, decimal), shown.length === 1)),
    );
  };
  const helpOf = (one: FunctionHelp, formula: string, open: boolean) =>
    element(
      "details",
      { open },
      element("summary", {}, element("strong", {}, `FRESH.${one.name}`)),
      element("p", {}, one.description),
      element(
        "dl",
        {},
        ...one.parameters.flatMap(({ name, description, optional }) => [
          element("dt", {}, optional ? inLine("functions-optional", { name }) : name),
          element("dd", {}, description),
        ]),
      ),
      element("p", {}, say("functions-example"), " ", element("code", {}, formula)),
      button(say("functions-insert"), () => void commands.insertFormula(formulaOf(one))),
    );
  input.addEventListener("input", show);
  store.watch(({ decimal }) => decimal, show);
  loading.then(
    (loaded) => {
      functions = loaded[speech().language];
      if (functions.length === 0) found.textContent = say("functions-not-loaded");
      show();
    },
    () => (found.textContent = say("functions-not-loaded")),
  );
  return element(
    "section",
    { "aria-labelledby": "fresh-functions-title" },
    element("h2", { id: "fresh-functions-title" }, say("functions-title")),
    element("label", { class: "input" }, element("span", {}, say("functions-search")), input),
    found,
    element("p", { class: "hint" }, say("functions-insert-hint")),
    list,
  );
}
