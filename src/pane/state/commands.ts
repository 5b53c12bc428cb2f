import type { Finding } from "../../fieldsheet/rule";
import type { CellPlace, ChartOrder, ReadArea, SheetHost } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { areaWithRoom, tableNow } from "./area-now";
import { checkAreaInSteps, placeOf } from "./checked-area";
import { inSlices } from "../kit/in-slices";
import { marksOfFindings } from "./marks-of-findings";
import { oneAtATime, type Job } from "./one-at-a-time";
import { keptSettings, type PaneStore } from "./pane-state";
import { problemSentence } from "../kit/problem-sentence";
import { resultsSheetTable } from "./results-sheet-table";

/** What a user can have the pane do. None of it throws: what goes wrong is in the state. */
export interface PaneCommands {
  check(): Promise<boolean>;
  /** Checks the same table again as it stands now. False where other work was under way. */
  checkAgain(): Promise<boolean>;
  stop(): void;
  /** Leads to the cell of a finding, or of a row and column of the checked table. */
  goTo(at: Pick<Finding, "row" | "field">): Promise<void>;
  /** Leads to a cell. */
  show(place: CellPlace): Promise<void>;
  /** Takes the selected column for the trend. */
  takeTrendColumn(): Promise<boolean>;
  mark(): Promise<boolean>;
  unmark(): Promise<boolean>;
  writeResultsSheet(): Promise<boolean>;
  /** Has the spreadsheet draw a chart; absent where it draws none. */
  addChart?(chart: ChartOrder): Promise<boolean>;
  /** Keeps the settings with the workbook. */
  keepSettings(): Promise<void>;
}

export function paneCommands(store: PaneStore, host: SheetHost): PaneCommands {
  const { run, stop } = oneAtATime(store);
  let marked = false;

  async function checkRead(read: ReadArea, decimal: DecimalMark, job: Job): Promise<string> {
    const { low, high } = store.get();
    const given = { low, high, decimal };
    const checked = await inSlices(checkAreaInSteps(read, given), job.pause);
    store.set({ checked });
    const { rows, findings } = checked.result;
    const tests = rows.filter(({ test }) => test !== "").length;
    const said = say("pane-checked", { address: read.address, tests, findings: findings.length });
    return marked ? `${said} ${say("pane-marks-are-older")}` : said;
  }

  /** One cell is hardly meant as the table to check; the table around it is. */
  async function readWhatIsChosen(job: Job): Promise<ReadArea> {
    const { scope } = store.get();
    const progress = (rows: number) => job.tell(say("pane-reading", { rows }));
    const read = await host.read(scope, progress);
    const oneCell = read.area.rows === 1 && read.area.columns === 1;
    return scope === "selection" && oneCell ? host.read("table", progress) : read;
  }

  async function quietly(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      store.set({ error: problemSentence(error) });
    }
  }

  return {
    stop,
    check: () =>
      run(
        "pane-checking",
        async (job) => {
          const read = await readWhatIsChosen(job);
          await job.pause();
          return checkRead(read, await host.decimalMark(), job);
        },
        true,
      ),
    async checkAgain() {
      const { checked } = store.get();
      if (!checked) return true;
      const { area } = checked.read;
      return run(
        "pane-checking",
        async (job) => {
          const read = tableNow(await host.readArea(areaWithRoom(area)), area.rows);
          return checkRead(read, checked.decimal, job);
        },
        true,
      );
    },
    async goTo(at) {
      const { checked } = store.get();
      if (checked) await quietly(() => host.select(placeOf(checked, at)));
    },
    show: (place) => quietly(() => host.select(place)),
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
      const { checked, withNotes } = store.get();
      if (!checked) return true;
      return run("pane-marking", async () => {
        const { sheetId } = checked.read.area;
        const marks = marksOfFindings(checked);
        const { cells, notes, remarks } = await host.mark(marks, withNotes, sheetId);
        marked = cells > 0;
        return [say("pane-marked", { cells, notes }), ...remarks].join(" ");
      });
    },
    unmark: () =>
      run("pane-unmarking", async () => {
        const { cells, notes, remarks } = await host.unmark();
        marked = false;
        return [say("pane-unmarked", { cells, notes }), ...remarks].join(" ");
      }),
    async writeResultsSheet() {
      const { checked } = store.get();
      if (!checked) return true;
      return run("pane-writing", async () => {
        const name = say("pane-results-sheet-name");
        const sheet = await host.writeResultsSheet(name, resultsSheetTable(checked));
        return say("pane-results-written", { sheet });
      });
    },
    ...(host.addChart && {
      addChart: (chart: ChartOrder) =>
        run("pane-writing", async () => {
          const sheet = await host.addChart!(chart);
          return say("trend-chart-added", { sheet });
        }),
    }),
    keepSettings: () => quietly(() => host.saveSettings(keptSettings(store.get()))),
  };
}
