import { workbenchHost } from "../hosts/workbench/workbench-host";
import { Problem } from "../measure/problem";
import { say, type MessageId } from "../messages/catalogue";
import { mountPane } from "../pane/pane";
import { showWhatCellsSay } from "./cell-says";
import { ErrorSentences } from "./functions/error-sentences";
import { loadFunctions } from "./functions/load-functions";
import { startUniver } from "./start-univer";
import { WorkbookOpener } from "./workbook-opener";
import "./workbench.css";

async function start(): Promise<void> {
  const sentences = new ErrorSentences();
  const api = startUniver(element("grid"), await loadFunctions(), sentences);
  // Open to whoever wants to read or script the sheet, the browser tests among them.
  Object.assign(globalThis, { univer: api });
  const workbooks = new WorkbookOpener(api);
  await workbooks.sample().catch(() => {
    workbooks.empty();
    tell("sample-not-loaded");
  });
  showWhatCellsSay(api, sentences, element("cell-says"));
  mountPane(element("pane"), workbenchHost(api));
  connectFileButtons(workbooks);
}

function connectFileButtons(workbooks: WorkbookOpener): void {
  const chooser = element("file") as HTMLInputElement;
  element("open-file").addEventListener("click", () => chooser.click());
  element("open-empty").addEventListener("click", () => workbooks.empty());
  element("open-sample").addEventListener("click", () =>
    workbooks.sample().catch(() => tell("sample-not-loaded")),
  );
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    chooser.value = "";
    if (file)
      workbooks
        .file(file)
        .catch((error: unknown) =>
          error instanceof Problem
            ? tell(error.id, error.values)
            : tell("file-not-read", { name: file.name }),
        );
  });
}

function tell(id: MessageId, values?: Problem["values"]): void {
  const line = element("cell-says");
  line.classList.add("is-error");
  line.textContent = say(id, values);
}

function element(id: string): HTMLElement {
  return document.getElementById(id)!;
}

void start();
