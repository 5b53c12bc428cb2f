import type { Finding } from "../../fieldsheet/rule";
import type { CellPlace, ChartOrder, ReadArea, SheetHost } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { sameRow } from "../../hosts/same-values";
import { sameRead } from "../../hosts/trimmed";
import { checkAreaInSteps, placeOf, type CheckedArea } from "./checked-area";
import { whereRowIs } from "./where-row-is";
import { inSlices } from "../kit/in-slices";
import { marksOfFindings } from "./marks-of-findings";
import { oneAtATime, type Job } from "./one-at-a-time";
import { keptSettings, type PaneStore } from "./pane-state";
import { problemSentence } from "../kit/problem-sentence";
import { resultsSheetTable } from "./results-sheet-table";

/** So often marking is begun before it is given up because the table is edited all the while. */
const MOST_ATTEMPTS = 3;

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
    return [
      say("pane-checked", { address: read.address, tests, findings: findings.length }),
      ...notRead(read),
      ...(marked ? [say("pane-marks-are-older")] : []),
    ].join(" ");
  }

  /** The checked table, checked anew where the sheet does not hold any more what was checked. */
  async function upToDate(
    checked: CheckedArea,
    job: Job,
  ): Promise<{ readonly checked: CheckedArea; readonly said: readonly string[] }> {
    const read = await host.readAgain(checked.read);
    if (sameRead(read, checked.read)) return { checked, said: [] };
    await checkRead(read, checked.decimal, job);
    const renewed = store.get().checked!;
    return { checked: renewed, said: [say("pane-checked-anew", { address: read.address })] };
  }

  /** Marks, and does it over again where somebody edits the table at that moment. */
  async function markNow(before: CheckedArea, job: Job): Promise<string> {
    const { withNotes } = store.get();
    for (let attempt = 1; ; attempt += 1) {
      const { checked, said } = await upToDate(before, job);
      try {
        const marks = marksOfFindings(checked);
        const { cells, notes, remarks } = await host.mark(marks, withNotes, checked.read);
        marked = cells > 0;
        return [...said, say("pane-marked", { cells, notes }), ...remarks].join(" ");
      } catch (error) {
        const changed = error instanceof Problem && error.id === "table-changed";
        if (!changed || attempt === MOST_ATTEMPTS) throw error;
        marked = false;
      }
    }
  }

  /** Leads to what does not stand any more where it was checked. */
  async function goToMoved(
    checked: CheckedArea,
    at: Pick<Finding, "row" | "field">,
    place: CellPlace,
  ): Promise<void> {
    const { read, result, headerRow } = checked;
    const now = await host.readAgain(read);
    const { sample, load } = result.columns;
    const checkedRow = { row: place.row - read.area.row, headerRow, id: (sample ?? load)?.index };
    const found = whereRowIs(read, checkedRow, now);
    const values = {
      row: place.row + 1,
      sample: at.row === null ? "" : result.rows[at.row]!.sample,
    };
    if (!found) throw new Problem("pane-test-gone", values);
    const { sheetId, row: top, column: left } = now.area;
    const column = left + (found.columns[place.column - read.area.column] ?? 0);
    const row = top + found.row;
    await host.select({ sheetId, row, column });
    const said = found.unchanged ? "pane-test-moved" : "pane-test-edited";
    store.set({ status: say(said, { ...values, now: row + 1 }) });
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
      return run(
        "pane-checking",
        async (job) => {
          return checkRead(await host.readAgain(checked.read), checked.decimal, job);
        },
        true,
      );
    },
    async goTo(at) {
      const { checked } = store.get();
      if (!checked) return;
      await quietly(async () => {
        store.set({ error: "", status: "" });
        const { area, values } = checked.read;
        const place = placeOf(checked, at);
        const cells = values[place.row - area.row]!;
        const stands = { ...area, row: place.row, rows: 1, columns: cells.length };
        const [now] = await host.select(place, stands);
        if (!sameRow(now!, cells)) await goToMoved(checked, at, place);
      });
    },
    show: (place) => quietly(async () => void (await host.select(place))),
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
      return run("pane-marking", (job) => markNow(checked, job));
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
      return run("pane-writing", async (job) => {
        const name = say("pane-results-sheet-name");
        const now = await upToDate(checked, job);
        const sheet = await host.writeResultsSheet(name, resultsSheetTable(now.checked));
        return [...now.said, say("pane-results-written", { sheet })].join(" ");
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

/** Says which filled cells beside what was checked were not read. */
function notRead({ below, cut = [] }: ReadArea): string[] {
  const beside = cut.some((side) => side !== "bottom");
  return [
    ...(below
      ? [say("pane-not-read-below", { from: below.row + 1, to: below.row + below.rows })]
      : []),
    ...(beside ? [say("pane-not-read-beside")] : []),
  ];
}
