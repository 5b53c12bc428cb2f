import { Problem } from "../../measure/problem";
import { inSlices } from "../../hosts/in-slices";
import type { SheetHost } from "../../hosts/sheet-host";
import { sameRead } from "../../hosts/trimmed";
import { say } from "../../messages/pane-catalogue";
import { checkRead } from "./check-read";
import type { CheckedArea } from "./checked-area";
import { marksInSteps } from "./marks-of-findings";
import { MarkedTables, type OtherTables } from "./marked-tables";
import type { Job } from "./one-at-a-time";
import type { PaneStore } from "./pane-state";

/** So often marking is begun before it is given up because the table is edited all the while. */
const MOST_ATTEMPTS = 3;

/** Puts marks and takes them off. */
export interface Marking {
  /** Marks what was found, and says what was done. */
  mark(checked: CheckedArea, job: Job): Promise<string>;
  unmark(job: Job): Promise<string>;
  /** The checked table, checked anew where the sheet does not hold any more what was checked. */
  upToDate(
    checked: CheckedArea,
    job: Job,
  ): Promise<{ readonly checked: CheckedArea; readonly said: readonly string[] }>;
  /** What is to be said of marks after a further check; nothing where there are none. */
  older(): string[];
}

export function marking(store: PaneStore, host: SheetHost): Marking {
  let marked = false;
  const tables = new MarkedTables();
  const upToDate: Marking["upToDate"] = async (checked, job) => {
    const read = await host.readAgain(checked.read);
    if (sameRead(read, checked.read)) return { checked, said: [] };
    await checkRead(store, host, read, checked.decimal, job);
    const renewed = store.get().checked!;
    return { checked: renewed, said: [say("pane-checked-anew", { address: read.address })] };
  };
  return {
    upToDate,
    older: () => (marked ? [say("pane-marks-are-older")] : []),
    async mark(before, job) {
      job.tell(say("pane-marking"));
      const { withNotes } = store.get();
      // It is done over again where somebody edits the table at that moment.
      for (let attempt = 1; ; attempt += 1) {
        const { checked, said } = await upToDate(before, job);
        try {
          const others = await tables.beside(checked.read, host);
          const found = await inSlices(marksInSteps(checked), job.pause);
          const now = [...others.kept, { read: checked.read, marks: found }];
          job.ifStopped(say("pane-stopped-marking"));
          const { cells, notes, remarks } = await host.mark(
            now.flatMap(({ marks }) => marks),
            withNotes,
            now.map(({ read }) => read),
            job.pause,
          );
          marked = cells > 0;
          tables.nowMarked(now);
          const done = [say("pane-marked", { cells, notes }), ...saidOfOthers(others)];
          return [...said, ...done, ...remarks].join(" ");
        } catch (error) {
          const changed = error instanceof Problem && error.id === "table-changed";
          if (!changed || attempt === MOST_ATTEMPTS) throw error;
          marked = false;
        }
      }
    },
    async unmark(job) {
      job.ifStopped(say("pane-stopped-unmarking"));
      const { cells, notes, remarks } = await host.unmark(job.pause);
      marked = false;
      tables.none();
      return [say("pane-unmarked", { cells, notes }), ...remarks].join(" ");
    },
  };
}

/** What became of the marks of other tables on the sheet. */
function saidOfOthers({ kept, changed }: OtherTables): string[] {
  const addresses = (tables: OtherTables["kept"]) =>
    tables.map(({ read }) => read.address).join(", ");
  return [
    ...(kept.length > 0 ? [say("pane-marks-kept-of", { addresses: addresses(kept) })] : []),
    ...(changed.length > 0 ? [say("pane-marks-gone-of", { addresses: addresses(changed) })] : []),
  ];
}
