import { workbenchHost, type WorkbenchHost } from "../hosts/workbench/workbench-host";
import { speakAsChosen } from "../messages/chosen-language";
import type { Language } from "../messages/language";
import { say } from "../messages/pane-catalogue";
import { mountPane } from "../pane/pane";
import { showWhatCellsSay } from "./cell-says";
import { connectFileButtons, sayOfFile, tell } from "./file-buttons";
import { ErrorSentences } from "./functions/error-sentences";
import { loadFunctions } from "./functions/load-functions";
import { mendGrid } from "./mend-grid";
import { pagePart } from "./page-part";
import { connectRegions } from "./regions";
import { sayPage } from "./say-page";
import { startUniver } from "./start-univer";
import { handOverTable } from "./files/save-table";
import { WorkbookOpener } from "./workbook-opener";
import "./workbench.css";

async function start(): Promise<void> {
  speakAsChosen(navigator.language);
  sayPage();
  const sentences = new ErrorSentences();
  const functions = await loadFunctions();
  pagePart("grid").replaceChildren();
  const api = startUniver(pagePart("grid"), functions, sentences);
  mendGrid(pagePart("grid"));
  connectRegions();
  // Open to whoever wants to read or script the sheet, the browser tests among them.
  Object.assign(globalThis, { univer: api });
  const helpIn = (language: Language) =>
    functions.map(({ help, example }) => ({ ...help[language], example }));
  const help = Promise.resolve({ en: helpIn("en"), es: helpIn("es") });
  let leave = () => {};
  const workbooks = new WorkbookOpener(api, () => {
    leave();
    sentences.clear();
    const host = workbenchHost(api);
    const sayOfCells = () => showWhatCellsSay(api, sentences, pagePart("cell-says"));
    let stopSaying = sayOfCells();
    mountPane(pagePart("pane"), { ...inSight(host), saveTable: handOverTable }, help, () => {
      sayPage();
      stopSaying();
      stopSaying = sayOfCells();
      // What the functions say in cells is said anew.
      sentences.clear();
      api.getFormula().executeCalculation();
    });
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
    sayOfFile(say("sample-not-loaded"));
  }
}

/** Where the pane lies below the spreadsheet, a cell that it leads to is brought into sight. */
function inSight(host: WorkbenchHost): WorkbenchHost {
  return {
    ...host,
    async select(...place) {
      const read = await host.select(...place);
      pagePart("grid").scrollIntoView({ block: "nearest" });
      return read;
    },
  };
}

start().catch((error: unknown) => {
  console.error(error);
  tell("workbench-not-started");
});
