import { excelHost } from "../hosts/excel/excel-host";
import { speakAsChosen } from "../messages/chosen-language";
import { FUNCTIONS_FILES } from "../messages/functions-file";
import { say } from "../messages/pane-catalogue";
import { functionHelpFrom, type FunctionHelps } from "./functions/function-help";
import { element } from "./kit/element";
import { mountPane } from "./pane";

const root = document.getElementById("pane")!;

// The functions of this page may be asked before Excel has said its language.
speakAsChosen(navigator.language);

// Outside Excel its library is there without a workbook, or is not there at all.
if (typeof Office === "undefined") sayWhereToOpen();
else
  Office.onReady(({ host }) => {
    // A host that the library does not know has no context.
    speakAsChosen((Office.context as Office.Context | undefined)?.displayLanguage);
    if (host === Office.HostType.Excel) mountPane(root, excelHost(), functionHelp());
    else sayWhereToOpen();
  });

/** The help stands in the very files that tell Excel and the workbench of the functions. */
async function functionHelp(): Promise<FunctionHelps> {
  const names = [FUNCTIONS_FILES.en, FUNCTIONS_FILES.es, "examples.json"];
  const [en, es, examples] = await Promise.all(
    names.map(async (name): Promise<unknown> => (await fetch(name)).json()),
  );
  return { en: functionHelpFrom(en, examples), es: functionHelpFrom(es, examples) };
}

function sayWhereToOpen(): void {
  root.replaceChildren(
    element(
      "div",
      { class: "fresh-pane" },
      element("h1", {}, say("pane-title")),
      element("p", { class: "purpose" }, say("pane-purpose")),
      element("p", {}, say("pane-open-in-excel")),
    ),
  );
}
