import type { SheetHost } from "../hosts/sheet-host";
import { say } from "../messages/pane-catalogue";
import { speak } from "../messages/speech";
import { blankCellsView } from "./blank-cells-view";
import { cautionsView } from "./kit/cautions-view";
import { checkBar } from "./check/check-bar";
import { checkPage } from "./check/check-page";
import { paneCommands, type PaneCommands } from "./state/commands";
import { element } from "./kit/element";
import { cursorFollower, followEdits } from "./state/listening";
import type { FunctionHelps } from "./functions/function-help";
import { functionsView } from "./functions/functions-view";
import { messagesView } from "./messages-view";
import { createPaneStore, stateFromSettings, type PaneStore } from "./state/pane-state";
import { languageSwitch } from "./kit/language-switch";
import { problemSentence } from "./kit/problem-sentence";
import { reportView } from "./report/report-view";
import { shownOf } from "./kit/store";
import { tabs } from "./kit/tabs";
import { testView } from "./test/test-view";
import { trendView } from "./trend/trend-view";
import { versionLine } from "./kit/version-line";
import "./pane.css";

/**
 * Puts the task pane into a page.
 *
 * @param root The element to fill.
 * @param host The spreadsheet to work on.
 * @param functions The help of the worksheet functions, once it is loaded.
 * @param onLanguage Told when somebody chose another language, for what the page says beside the pane.
 */
export function mountPane(
  root: HTMLElement,
  host: SheetHost,
  functions: Promise<FunctionHelps>,
  onLanguage: () => void = () => {},
): void {
  const store = createPaneStore();
  const commands = paneCommands(store, host);
  const followCursor = cursorFollower(store, host);
  let forget = () => {};
  const draw = () => {
    forget();
    followCursor(false);
    const drawn = shownOf(store);
    forget = drawn.forget;
    root.replaceChildren(drawnPane(drawn, host, functions, commands, followCursor, again));
  };
  const again = () => {
    // What was said is in the language of before.
    store.set({ status: "", error: "" });
    draw();
    onLanguage();
    root.querySelector<HTMLElement>("button.language")?.focus();
  };
  draw();
  host.decimalMark().then(
    (decimal) => {
      speak({ decimal });
      store.set({ decimal });
    },
    // What goes wrong here goes wrong with the check, which says so.
    () => {},
  );
  host
    .settings()
    .then((kept) => store.set(stateFromSettings(kept, store.get())))
    .catch((error) => store.set({ error: problemSentence(error) }))
    .finally(() => followEdits(store, host, commands));
}

function drawnPane(
  store: PaneStore,
  host: SheetHost,
  functions: Promise<FunctionHelps>,
  commands: PaneCommands,
  followCursor: (on: boolean) => void,
  onLanguage: () => void,
): HTMLElement {
  const trend = trendView(store, commands);
  const report = reportView(store, commands);
  const pages = tabs(
    say("pane-pages"),
    [
      { id: "fresh-check", label: say("pane-page-check"), view: checkPage(store, commands) },
      {
        id: "fresh-test",
        label: say("pane-page-test"),
        view: testView(store, commands),
        onShown: followCursor,
      },
      { id: "fresh-trend", label: say("pane-page-trend"), ...trend },
      { id: "fresh-report", label: say("pane-page-report"), ...report },
      {
        id: "fresh-functions",
        label: say("pane-page-functions"),
        view: functionsView(store, commands, functions),
      },
    ],
    () => {
      // What was done on one page is no news on another.
      if (!store.get().work) store.set({ status: "", error: "" });
    },
  );
  return element(
    "div",
    { class: "fresh-pane" },
    element(
      "div",
      { class: "title" },
      element("h1", {}, say("pane-title")),
      ...languageSwitch(onLanguage),
    ),
    element("p", { class: "purpose" }, say("pane-purpose")),
    element(
      "div",
      { class: "head" },
      pages.list,
      checkBar(store, commands),
      messagesView(store, commands.stop),
    ),
    ...pages.panels,
    blankCellsView(store, host),
    cautionsView("fresh-cautions"),
    versionLine(),
  );
}
