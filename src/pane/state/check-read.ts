import type { ReadArea } from "../../hosts/sheet-host";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { inSlices } from "../kit/in-slices";
import { checkAreaInSteps } from "./checked-area";
import type { Job } from "./one-at-a-time";
import type { PaneStore } from "./pane-state";

/** Checks what was read and keeps what was found. @returns What there is to say about it. */
export async function checkRead(
  store: PaneStore,
  read: ReadArea,
  decimal: DecimalMark,
  job: Job,
): Promise<string[]> {
  const { low, high } = store.get();
  const checked = await inSlices(checkAreaInSteps(read, { low, high, decimal }), job.pause);
  store.set({ checked, fresh: new Set(), elsewhere: [] });
  const { results, findings, reading } = checked.result;
  const tests = results.filter(({ test }) => test !== "").length;
  return [
    say("pane-checked", { address: read.address, tests, findings: findings.length }),
    ...(reading.forms === undefined ? [] : [say("pane-forms", { forms: reading.forms })]),
    ...notRead(read),
  ];
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
