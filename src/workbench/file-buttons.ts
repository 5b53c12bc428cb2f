import { Problem } from "../measure/problem";
import { say, sentenceOf, type MessageId } from "../messages/pane-catalogue";
import { pagePart } from "./page-part";
import { handOver } from "./hand-over";
import type { WorkbookOpener } from "./workbook-opener";

const MEGABYTE = 1e6;

/** Lets the buttons above the sheet open and save workbooks. */
export function connectFileButtons(workbooks: WorkbookOpener): void {
  const chooser = pagePart("file") as HTMLInputElement;
  pagePart("open-file").addEventListener("click", () => chooser.click());
  pagePart("open-empty").addEventListener("click", () => {
    workbooks.empty();
    sayOfFile("");
  });
  pagePart("open-sample").addEventListener("click", () =>
    workbooks.sample().then(
      () => sayOfFile(""),
      () => tell("sample-not-loaded"),
    ),
  );
  pagePart("save-file").addEventListener("click", () => void save(workbooks));
  chooser.addEventListener("change", () => {
    const [file] = chooser.files ?? [];
    chooser.value = "";
    if (file) void open(workbooks, file);
  });
}

async function open(workbooks: WorkbookOpener, file: File): Promise<void> {
  const { name } = file;
  const size = Math.max(0.1, Math.round((file.size / MEGABYTE) * 10) / 10);
  await atWork(say("file-opening", { name, size }), "file-not-read", { name }, async () => {
    const remarks = await workbooks.open(file);
    sayOfFile([say("file-opened", { name }), ...remarks].join(" "));
  });
}

async function save(workbooks: WorkbookOpener): Promise<void> {
  await atWork(say("file-saving"), "spreadsheet-failed", {}, async () => {
    const { name, bytes, remarks, ...counts } = await workbooks.toSave();
    handOver(name, bytes);
    workbooks.saved();
    sayOfFile([say("file-saved", { name, ...counts }), ...remarks].join(" "));
  });
}

/** Says what is being done before it is done, since the page stands still meanwhile. */
async function atWork(
  doing: string,
  otherwise: MessageId,
  values: Problem["values"],
  work: () => Promise<void>,
): Promise<void> {
  const before = pagePart("file-says").textContent ?? "";
  sayOfFile(doing);
  document.body.setAttribute("aria-busy", "true");
  await painted();
  try {
    await work();
  } catch (error) {
    sayOfFile(before);
    if (error instanceof Problem) tell(error.id, error.values);
    else tell(otherwise, values);
  } finally {
    document.body.removeAttribute("aria-busy");
  }
}

/** Until the browser has shown what was said last; a page in the background shows nothing. */
function painted(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 100);
  });
}

/** Puts a sentence about the file into the line above the sheet. */
export function sayOfFile(sentence: string): void {
  const line = pagePart("file-says");
  line.textContent = sentence;
  line.hidden = sentence === "";
}

/** Puts a sentence into the line under the sheet. */
export function tell(id: MessageId, values: Problem["values"] = {}): void {
  const line = pagePart("cell-says");
  line.classList.add("is-error");
  line.textContent = sentenceOf(id, values);
}
