import { Problem } from "../measure/problem";
import { sentenceOf, type MessageId } from "../messages/pane-catalogue";
import { pagePart } from "./page-part";
import type { WorkbookOpener } from "./workbook-opener";

/** Lets the buttons above the sheet open workbooks. */
export function connectFileButtons(workbooks: WorkbookOpener): void {
  const chooser = pagePart("file") as HTMLInputElement;
  pagePart("open-file").addEventListener("click", () => chooser.click());
  pagePart("open-empty").addEventListener("click", () => workbooks.empty());
  pagePart("open-sample").addEventListener("click", () =>
    workbooks.sample().catch(() => tell("sample-not-loaded")),
  );
  chooser.addEventListener("change", async () => {
    const [file] = chooser.files ?? [];
    chooser.value = "";
    if (!file) return;
    try {
      await workbooks.file(file);
    } catch (error) {
      if (error instanceof Problem) tell(error.id, error.values);
      else tell("file-not-read", { name: file.name });
    }
  });
}

/** Puts a sentence into the line under the sheet. */
export function tell(id: MessageId, values: Problem["values"] = {}): void {
  const line = pagePart("cell-says");
  line.classList.add("is-error");
  line.textContent = sentenceOf(id, values);
}
