import { SPECIFIED_AIR_TABLES } from "../../acceptance/specified-air/specified-air";
import { say } from "../../messages/pane-catalogue";
import { SETUP_SHEET } from "../../reading/setup/setup-sheet-name";
import { choice } from "../kit/choice";
import { button, element } from "../kit/element";
import { textInput } from "../kit/text-input";
import type { PaneCommands } from "../state/commands";
import type { PaneStore } from "../state/pane-state";
import { mixesSeen } from "../state/setup/mixes-seen";

/** The mixes of the checked tests, and how to write down what is specified for them. */
export function mixesView(store: PaneStore, commands: PaneCommands): HTMLElement {
  const known = element("p");
  let size = "";
  const source = choice<string>(say("pane-specified-air-from"), () => showExposures());
  source.offer([
    ["", say("pane-specified-air-none")],
    ...SPECIFIED_AIR_TABLES.map(({ name }) => [name, name] as const),
  ]);
  const exposure = choice<string>(say("pane-exposure"), () => {});
  const ofSize = textInput(say("pane-aggregate-size"), (typed) => (size = typed));
  const showExposures = () => {
    const table = SPECIFIED_AIR_TABLES.find(({ name }) => name === source.value());
    exposure.offer(Object.keys(table?.air ?? {}).map((name) => [name, name] as const));
    exposure.view.hidden = table === undefined;
    ofSize.view.hidden = table?.sizes === undefined;
  };
  showExposures();
  const add = button(say("pane-add-mixes"), () => {
    const table = source.value();
    void commands.addMixes(
      table === "" ? undefined : { table, exposure: exposure.value(), size: size.trim() },
    );
  });
  const view = element(
    "details",
    { class: "mixes" },
    element("summary", {}, say("pane-mixes")),
    known,
    element("p", { class: "hint" }, say("pane-mixes-hint", { sheet: SETUP_SHEET })),
    element("div", { class: "inputs" }, source.view, exposure.view, ofSize.view),
    element("div", { class: "actions" }, add),
  );
  const show = () => {
    const { checked, setup } = store.get();
    const seen = mixesSeen(checked);
    const limited = seen.filter(({ mix }) => {
      const air = setup?.setup.specificationFor(mix)?.air;
      return air?.low !== undefined || air?.high !== undefined;
    });
    view.hidden = seen.length === 0;
    known.textContent = say("pane-mixes-counted", { mixes: seen.length, limited: limited.length });
  };
  store.watch(({ checked }) => checked, show);
  store.watch(({ setup }) => setup, show);
  store.watch(
    ({ work }) => work !== undefined,
    (busy) => add.setAttribute("aria-disabled", String(busy)),
  );
  return view;
}
