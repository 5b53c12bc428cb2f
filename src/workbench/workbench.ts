import { workbenchHost } from "../hosts/workbench/workbench-host";
import { mountPane } from "../pane/pane";
import { showWhatCellsSay } from "./cell-says";
import { connectFileButtons, tell } from "./file-buttons";
import { ErrorSentences } from "./functions/error-sentences";
import { loadFunctions } from "./functions/load-functions";
import { pagePart } from "./page-part";
import { startUniver } from "./start-univer";
import { WorkbookOpener } from "./workbook-opener";
import "./workbench.css";

async function start(): Promise<void> {
  const sentences = new ErrorSentences();
  const api = startUniver(pagePart("grid"), await loadFunctions(), sentences);
  // Open to whoever wants to read or script the sheet, the browser tests among them.
  Object.assign(globalThis, { univer: api });
  let leave = () => {};
  const workbooks = new WorkbookOpener(api, () => {
    leave();
    sentences.clear();
    const host = workbenchHost(api);
    mountPane(pagePart("pane"), host);
    const stopSaying = showWhatCellsSay(api, sentences, pagePart("cell-says"));
    leave = () => {
      host.stopListening();
      stopSaying();
    };
  });
  connectFileButtons(workbooks);
  try {
    await workbooks.loadSample();
    await workbooks.sample();
  } catch (error) {
    console.error(error);
    workbooks.empty();
    tell("sample-not-loaded");
  }
}

start().catch((error: unknown) => {
  console.error(error);
  tell("workbench-not-started");
});
