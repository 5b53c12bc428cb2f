import { sidesCut } from "../../hosts/area-around";
import { blockOf } from "../../hosts/cell-address";
import type { ReadArea, SheetHost } from "../../hosts/sheet-host";
import { Problem } from "../../measure/problem";
import { say } from "../../messages/pane-catalogue";
import { checkRead } from "./check-read";
import type { CheckedArea } from "./checked-area";
import { findTests, type SheetWithTests } from "./find-tests";
import type { Marking } from "./marking";
import type { Job } from "./one-at-a-time";
import { isLackOfTests } from "./lack-of-tests";
import { unreadTable, type UnreadTable } from "./setup/column-lines";
import { withChoices } from "./setup/choices";
import type { SetupKeeping } from "./setup/keeping";
import type { PaneStore } from "./pane-state";
import { whatIsNew } from "./what-is-new";

/** The ways to a check. Each gives what there is to say about it. */
export interface Checking {
  /** Checks the tests that are meant. */
  found(job: Job): Promise<string>;
  /** Checks the tests of another sheet, and shows them. */
  sheet(sheet: SheetWithTests, job: Job): Promise<string>;
  /** Checks the selected cells; a single one stands for the table around it. */
  selection(job: Job): Promise<string>;
  /** Checks cells of the checked sheet, or of the one in front. */
  cells(address: string, job: Job): Promise<string>;
  /** Checks a table in which no tests were found, after it was said what its columns hold. */
  unread(table: UnreadTable, job: Job): Promise<string>;
  /** Checks a table again as it stands now, and tells what is new. */
  again(checked: CheckedArea, job: Job): Promise<string>;
}

export function checking(
  store: PaneStore,
  host: SheetHost,
  marks: Marking,
  setups: SetupKeeping,
): Checking {
  const progress = (job: Job) => (rows: number) => job.tell(say("pane-reading", { rows }));

  /** Checks what was read, and marks it where that is wished. */
  async function checkAndMark(
    read: ReadArea,
    job: Job,
    looked?: readonly string[],
  ): Promise<string> {
    await job.pause();
    const decimal = await host.decimalMark();
    store.set({ decimal });
    const ofSetup = looked ?? (await setups.look());
    const said = [...(await checkRead(store, host, read, decimal, job)), ...ofSetup];
    const { marking, checked } = store.get();
    const more = marking ? [await marks.mark(checked!, job)] : marks.older();
    return [...said, ...more].join(" ");
  }

  async function checkFound(job: Job): Promise<string> {
    // Tests may be found by headers that only the setup names.
    const ofSetup = await setups.look();
    const { setup, choices } = store.get();
    const kept = withChoices(setup?.setup, choices).columns;
    const found = await findTests(host, progress(job), kept).catch(async (error) => {
      // Its columns are shown, so that it can be said what they hold.
      const read = isLackOfTests(error) && (await host.read("table").catch(() => undefined));
      if (read) store.set({ unread: unreadTable(read, kept) });
      throw error;
    });
    if ("read" in found) return checkAndMark(found.read, job, ofSetup);
    store.set({ elsewhere: found.elsewhere });
    throw new Problem("tests-elsewhere");
  }

  /** Reads cells that were named, and sees whether they cut through a table. */
  async function readNamed(address: string): Promise<ReadArea> {
    const block = blockOf(address);
    if (!block) throw new Problem("no-area", { typed: address });
    const [front] = await host.sheetTops(1);
    const { sheetId, sheetName } = store.get().checked?.read.area ?? front!.area;
    const named = { area: { sheetId, sheetName, ...block }, address, values: [] };
    const whole = await host.readAgain(named);
    return host.readAgain({ ...named, cut: sidesCut(named.area, [whole.area]) });
  }

  return {
    found: checkFound,
    async sheet({ place, forms }, job) {
      await host.select(place);
      if (forms) return checkFound(job);
      return checkAndMark(await host.read("table", progress(job), place), job);
    },
    async selection(job) {
      const read = await host.read("selection", progress(job));
      const oneCell = read.area.rows === 1 && read.area.columns === 1;
      return checkAndMark(oneCell ? await host.read("table", progress(job)) : read, job);
    },
    cells: async (address, job) => checkAndMark(await readNamed(address), job),
    unread: async ({ read }, job) => checkAndMark(await host.readAgain(read), job),
    async again(before, job) {
      const read = await host.readAgain(before.read);
      const ofSetup = store.get().setupIsOld ? await setups.look() : [];
      const said = await checkRead(store, host, read, before.decimal, job);
      const { fresh, gone } = whatIsNew(before.result, store.get().checked!.result);
      store.set({ fresh });
      const differs = fresh.size + gone > 0;
      const news = differs ? [say("pane-what-is-new", { fresh: fresh.size, gone })] : [];
      return [...said, ...ofSetup, ...news, ...marks.older()].join(" ");
    },
  };
}
