import type { Finding, Weight } from "../../fieldsheet/finding";
import type { CellPlace, ChartOrder, SheetHost, SheetLook } from "../../hosts/sheet-host";
import type { CellValue } from "../../measure/cell-value";
import { numberFromCell } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { copyText } from "../kit/copy-text";
import { problemSentence } from "../kit/problem-sentence";
import { inSlices } from "../../hosts/in-slices";
import { aroundChecked, type AroundChecked } from "./around-checked";
import type { CheckedArea } from "./checked-area";
import { checking } from "./checking";
import type { SheetWithTests } from "./find-tests";
import { findingLines } from "./finding-lines";
import { goTo } from "./go-to";
import { marking } from "./marking";
import { oneAtATime, type Job } from "./one-at-a-time";
import { REPORT_SHEET } from "./own-sheets";
import { keptSettings, type PaneStore } from "./pane-state";
import { correctionKey, type NoticedCorrection } from "./review/noticed-corrections";
import { reviewing } from "./review/reviewing";
import { withChoice, type Choice } from "./setup/choices";
import { setupKeeping } from "./setup/keeping";
import type { SpecifiedFrom } from "./setup/specified-air-line";
import { resultsInSteps } from "./results-sheet-table";

/** What a user can have the pane do. None of it throws: what goes wrong is in the state. */
export interface PaneCommands {
  /** Finds the tests that are meant and checks them; marks what it finds where that is wished. */
  check(): Promise<boolean>;
  /** Checks the tests of another sheet, and shows them. */
  checkSheet(sheet: SheetWithTests): Promise<boolean>;
  /** Checks the selected cells; a single one stands for the table around it. */
  checkSelection(): Promise<boolean>;
  /** Checks cells of the checked sheet, or of the one in front, by their address. */
  checkCells(address: string): Promise<boolean>;
  /** Checks the same table again as it stands now. False where other work was under way. */
  checkAgain(): Promise<boolean>;
  stop(): void;
  /** Leads to the cell of a finding, or of a row and column of the checked table. */
  goTo(at: Pick<Finding, "record" | "field">): Promise<void>;
  /** Leads to a cell that held a number, and says so where it holds another by now. */
  show(place: CellPlace, held: number): Promise<void>;
  /** Takes the selected column for the trend. */
  takeTrendColumn(): Promise<boolean>;
  mark(): Promise<boolean>;
  unmark(): Promise<boolean>;
  writeResultsSheet(): Promise<boolean>;
  /** Records what was decided of findings. */
  decide(
    findings: readonly Finding[],
    decision: "accepted" | "open",
    reason: string,
  ): Promise<boolean>;
  /** Records corrections that were noticed. */
  recordCorrections(noticed: readonly NoticedCorrection[]): Promise<boolean>;
  /** Takes something that was noticed for no correction. */
  dismissCorrection(noticed: NoticedCorrection): void;
  /** Records that the checked sheet had another name when findings of it were decided. */
  recordRenamed(before: string): Promise<boolean>;
  /**
   * Keeps a report of the checked tests, as they are by now, on a new sheet or as a file.
   * @param make Makes its rows, in steps; the words of a sheet are to fit its columns, those of a file not.
   */
  keepReport(as: ReportKept, make: MakeReport): Promise<boolean>;
  /** Whether reports can be kept as files of their own. */
  readonly keepsFiles: boolean;
  /** Whether a report on a sheet has pictures. */
  readonly sheetsShowPictures: boolean;
  /** Checks anew what was edited since the check. @returns Whether there is a check to print. */
  bringUpToDate(): Promise<boolean>;
  /** What belongs to the check and does not stand in its cells. */
  aroundChecked(checked: CheckedArea): Promise<AroundChecked>;
  /** Takes a column for what the user says, and checks again at once. */
  choose(choice: Choice): Promise<boolean>;
  /** Keeps in the workbook what the user has said of columns. */
  keepSetup(): Promise<boolean>;
  /** Adds the mixes of the checked tests to the setup, with specified air where it is asked for. */
  addMixes(from: SpecifiedFrom | undefined): Promise<boolean>;
  /** Has the spreadsheet draw a chart; absent where it draws none. */
  addChart?(chart: ChartOrder): Promise<boolean>;
  /** Puts the findings of these weights on the clipboard. */
  copyFindings(shown: ReadonlySet<Weight>): Promise<void>;
  /** Puts a formula into the selected cell. */
  insertFormula(formula: string): Promise<void>;
  /** Keeps the settings with the workbook. */
  keepSettings(): Promise<void>;
}

/** Where a report is kept. */
export type ReportKept = "sheet" | "xlsx" | "csv";

/** A report in rows, with a name for its file. */
export interface ReportRows {
  readonly rows: readonly (readonly CellValue[])[];
  readonly look: SheetLook;
  readonly file: string;
}

/** Makes the rows of a report of what was checked, in steps that yield the share that is done. */
export type MakeReport = (checked: CheckedArea) => Generator<number, ReportRows>;

export function paneCommands(store: PaneStore, host: SheetHost): PaneCommands {
  const { run, stop } = oneAtATime(store);
  const marks = marking(store, host);
  const setups = setupKeeping(store, host);
  const checks = checking(store, host, marks, setups);
  const review = reviewing(store, host, marks);

  async function quietly(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      store.set({ error: problemSentence(error) });
    }
  }

  /** Where a check comes to nothing, the one before stays in sight, and it is said of what it is. */
  async function check(work: (job: Job) => Promise<string>): Promise<boolean> {
    const ran = await run("pane-checking", work, true);
    const { error, checked } = store.get();
    if (ran && error !== "") {
      const shown = checked && say("pane-still-shown", { address: checked.read.address });
      // A setup that was not applied may be why.
      store.set({ error: [error, ...setups.said(), ...(shown ? [shown] : [])].join(" ") });
    }
    return ran;
  }

  async function checkAgain(): Promise<boolean> {
    const { checked } = store.get();
    if (!checked) return true;
    return check((job) => checks.again(checked, job));
  }

  return {
    stop,
    check: () => check(checks.found),
    checkSheet: (sheet) => check((job) => checks.sheet(sheet, job)),
    checkSelection: () => check(checks.selection),
    checkCells: (address) => check((job) => checks.cells(address, job)),
    checkAgain,
    async goTo(at) {
      const { checked } = store.get();
      if (!checked) return;
      await quietly(async () => {
        store.set({ error: "", status: "" });
        store.set({ status: await goTo(host, checked, at) });
      });
    },
    show: (place, held) =>
      quietly(async () => {
        store.set({ error: "", status: "" });
        const { sheetName } = store.get().trendColumn!.read.area;
        const now = await host.select(place, { ...place, sheetName, rows: 1, columns: 1 });
        const is = numberFromCell(now[0]?.[0] ?? null, store.get().decimal);
        if (is !== held) store.set({ status: say("trend-cell-changed", { held }) });
      }),
    takeTrendColumn: () =>
      run("pane-reading-column", async (job) => {
        const read = await host.read("selection", (rows) =>
          job.tell(say("pane-reading", { rows })),
        );
        if (read.area.columns !== 1 || read.area.rows < 2) throw new Problem("trend-one-column");
        store.set({ trendColumn: { read, decimal: await host.decimalMark() } });
        return "";
      }),
    async mark() {
      const { checked } = store.get();
      if (!checked) return true;
      return run("pane-marking", (job) => marks.mark(checked, job), true);
    },
    unmark: () => run("pane-unmarking", marks.unmark, true),
    async writeResultsSheet() {
      const { checked } = store.get();
      if (!checked) return true;
      const write = async (job: Job) => {
        const name = say("pane-results-sheet-name");
        const now = await marks.upToDate(checked, job);
        const { lines, cut } = await inSlices(resultsInSteps(now.checked), job.pause);
        const sheet = await host.writeResultsSheet(name, lines, undefined, job.pause);
        return [...now.said, say("pane-results-written", { sheet }), ...cut].join(" ");
      };
      return run("pane-writing", write, true);
    },
    decide: (findings, decision, reason) =>
      run("pane-writing", (job) => review.decide(findings, decision, reason, job)),
    recordCorrections: (noticed) => run("pane-writing", () => review.corrected(noticed)),
    dismissCorrection(noticed) {
      const key = correctionKey(noticed);
      const { corrections, noCorrections } = store.get();
      store.set({
        corrections: corrections.filter((one) => correctionKey(one) !== key),
        noCorrections: new Set([...noCorrections, key]),
      });
    },
    recordRenamed: (before) => run("pane-writing", () => review.renamed(before)),
    keepsFiles: host.saveTable !== undefined,
    sheetsShowPictures: host.showsPictures,
    aroundChecked: ({ read }) => aroundChecked(host, read),
    async keepReport(as, make) {
      const { checked } = store.get();
      if (!checked) return true;
      const keep = async (job: Job) => {
        const now = await marks.upToDate(checked, job);
        const { rows, look, file } = await inSlices(make(now.checked), job.pause);
        if (as !== "sheet") {
          await host.saveTable!(file, as, rows, look);
          return [...now.said, say("report-saved", { file: `${file}.${as}` })].join(" ");
        }
        const sheet = await host.writeResultsSheet(REPORT_SHEET, rows, look);
        return [...now.said, say("report-sheet-written", { sheet })].join(" ");
      };
      return run("pane-writing", keep, true);
    },
    async bringUpToDate() {
      const { checked } = store.get();
      if (!checked) return false;
      const look = async (job: Job) => (await marks.upToDate(checked, job)).said.join(" ");
      return (await run("pane-checking", look, true)) && store.get().error === "";
    },
    async choose(choice) {
      store.set({ choices: withChoice(store.get().choices, choice) });
      const { unread } = store.get();
      return unread ? check((job) => checks.unread(unread, job)) : checkAgain();
    },
    async keepSetup() {
      if (store.get().choices.size === 0) return true;
      return run("pane-writing", setups.keep);
    },
    async addMixes(from) {
      const added = await run("pane-writing", () => setups.addMixes(from));
      const { status } = store.get();
      if (added && status !== "") {
        await checkAgain();
        store.set({ status: [status, store.get().status].join(" ") });
      }
      return added;
    },
    ...(host.addChart && {
      addChart: (chart: ChartOrder) =>
        run("pane-writing", async () => {
          const sheet = await host.addChart!(chart);
          return say("trend-chart-added", { sheet });
        }),
    }),
    async copyFindings(shown) {
      const { checked } = store.get();
      if (!checked) return;
      const lines = findingLines(checked, shown);
      const copied = await copyText(lines.join("\n"));
      store.set({
        error: copied ? "" : say("pane-not-copied"),
        status: copied ? say("pane-copied", { findings: lines.length }) : "",
      });
    },
    insertFormula: (formula) =>
      quietly(async () => {
        store.set({ error: "", status: "" });
        const cell = await host.insertFormula(formula);
        store.set({ status: say("functions-inserted", { cell }) });
      }),
    keepSettings: () => quietly(() => host.saveSettings(keptSettings(store.get()))),
  };
}
