import type { SheetHost } from "../hosts/sheet-host";
import { say } from "../messages/pane-catalogue";
import { blankCellsView } from "./blank-cells-view";
import { cautionsView } from "./kit/cautions-view";
import { checkBar } from "./check/check-bar";
import { checkPage } from "./check/check-page";
import { paneCommands } from "./state/commands";
import { element } from "./kit/element";
import { cursorFollower, followEdits } from "./state/listening";
import type { FunctionHelp } from "./functions/function-help";
import { functionsView } from "./functions/functions-view";
import { messagesView } from "./messages-view";
import { createPaneStore, stateFromSettings } from "./state/pane-state";
import { problemSentence } from "./kit/problem-sentence";
import { reportView } from "./report/report-view";
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
 */
export function mountPane(
  root: HTMLElement,
  host: SheetHost,
  functions: Promise<readonly FunctionHelp[]>,
): void {
  const store = createPaneStore();
  const commands = paneCommands(store, host);
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
        onShown: cursorFollower(store, host),
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
  root.replaceChildren(
    element(
      "div",
      { class: "fresh-pane" },
      element("h1", {}, say("pane-title")),
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
    ),
  );
  host.decimalMark().then(
    (decimal) => store.set({ decimal }),
    // What goes wrong here goes wrong with the check, which says so.
    () => {},
  );
  host
    .settings()
    .then((kept) => store.set(stateFromSettings(kept, store.get())))
    .catch((error) => store.set({ error: problemSentence(error) }))
    .finally(() => followEdits(store, host, commands));
}
