import fc from "fast-check";
import { excelHost } from "../../../src/hosts/excel/excel-host";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore, type PaneStore } from "../../../src/pane/state/pane-state";
import { reviewOf } from "../../../src/pane/state/review/review-of";
import { HEADINGS, REVIEW_SHEET } from "../../../src/review/review-entry";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { Held, SheetModel } from "../../excel-client/sheet-model";
import { edit, insertColumns, insertRows, sortRows } from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * Two panes decide while somebody sorts, edits and renames around them. Whatever the order: what was written stays
 * written, cells of the user's own stay, and a finding is accepted only where a line says so of what stands there.
 */

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Reported air"];
const OWN = "the user's own cell";

const excel = startExcel();
afterAll(untilReleased);

interface Scene {
  readonly loads: SheetModel;
  readonly panes: readonly { store: PaneStore; commands: ReturnType<typeof paneCommands> }[];
  /** Lines that were written, each as text, in the order of its cells. */
  readonly written: Map<string, number>;
}

function begin(): Scene {
  excel.workbook = new WorkbookModel();
  const loads = excel.workbook.front;
  loads.grid = [HEADERS, ...[5, 6, 7, 6, 5.5].map((air, i) => [`L-${i}`, 5, 5, 32, air])];
  const panes = ["KR", "TM"].map((initials) => {
    const store = createPaneStore();
    store.set({ initials });
    return { store, commands: paneCommands(store, excelHost()) };
  });
  return { loads, panes, written: new Map() };
}

const review = () => excel.workbook.sheets.find(({ name }) => name === REVIEW_SHEET);
const filled = (cells: readonly Held[] = []) => cells.filter((cell) => cell !== "" && cell !== OWN);

/** What the sheet of the review holds, a line each, whatever its columns stand in. */
function linesNow(): string[] {
  return (review()?.grid ?? [])
    .map((cells) => [...filled(cells)].sort().join("|"))
    .filter((line) => line !== "");
}

async function check({ loads, panes }: Scene, which: number): Promise<void> {
  excel.workbook.select(loads, { top: 1, left: 0, bottom: 1, right: 0 });
  await panes[which]!.commands.check();
}

type Act = (scene: Scene) => Promise<void> | void;
const nth = fc.nat({ max: 9 });
const pane = fc.nat({ max: 1 });

const acts: fc.Arbitrary<{ name: string; act: Act }> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .tuple(pane, nth, fc.boolean())
      .map(([which, i, accepted]) =>
        named(`pane ${which} decides ${i}`, decide(which, i, accepted)),
      ),
  },
  {
    weight: 3,
    arbitrary: pane.map((which) => named(`pane ${which} checks`, (scene) => check(scene, which))),
  },
  {
    weight: 1,
    arbitrary: pane.map((which) =>
      named(`pane ${which} records corrections`, recordCorrections(which)),
    ),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(nth, fc.constantFrom(5, 5.5, 6, 7))
      .map(([i, air]) =>
        named(`load ${i % 5} is ${air}`, ({ loads }) => edit(loads, 1 + (i % 5), 4, air)),
      ),
  },
  {
    weight: 1,
    arbitrary: fc
      .nat({ max: 4 })
      .map((by) =>
        named(
          `loads sorted by ${by}`,
          ({ loads }) =>
            void sortRows(loads, { top: 1, left: 0, bottom: loads.grid.length - 1, right: 4 }, by),
        ),
      ),
  },
  {
    weight: 1,
    arbitrary: nth.map((i) =>
      named("a load is named as another", ({ loads }) => edit(loads, 1 + (i % 5), 0, "L-1")),
    ),
  },
  { weight: 1, arbitrary: nth.map((i) => named("the review is sorted", sortReview(i))) },
  {
    weight: 1,
    arbitrary: fc.constant(named("a column of the user's own in the review", ownColumn)),
  },
  { weight: 1, arbitrary: fc.constant(named("a title above the review", ownTitle)) },
);

function named(name: string, act: Act) {
  return { name, act };
}

function decide(which: number, i: number, accepted: boolean): Act {
  return async (scene) => {
    const { store, commands } = scene.panes[which]!;
    const findings = store.get().checked?.result.findings ?? [];
    const finding = findings[i % Math.max(1, findings.length)];
    if (!finding) return;
    await commands.decide([finding], accepted ? "accepted" : "open", "seen");
  };
}

function recordCorrections(which: number): Act {
  return async ({ panes }) => {
    const { store, commands } = panes[which]!;
    const { corrections } = store.get();
    if (corrections.length > 0) await commands.recordCorrections(corrections);
  };
}

/** Below its headings only, as one sorts a table with headers. */
function sortReview(by: number): Act {
  return () => {
    const sheet = review();
    const headed = sheet?.grid.findIndex((cells) => cells?.includes("decision")) ?? -1;
    if (!sheet || headed < 0) return;
    const right = Math.max(...sheet.grid.map((cells) => cells?.length ?? 0)) - 1;
    const block = { top: headed + 1, left: 0, bottom: sheet.grid.length - 1, right };
    if (block.bottom > block.top) sortRows(sheet, block, by);
  };
}

function ownColumn(): void {
  const sheet = review();
  if (!sheet || sheet.grid.length === 0) return;
  insertColumns(sheet, 1, 1);
  edit(sheet, sheet.grid.length - 1, 1, OWN);
}

function ownTitle(): void {
  const sheet = review();
  if (!sheet || sheet.grid.length === 0) return;
  insertRows(sheet, 0, 1);
  edit(sheet, 0, 0, OWN);
}

const owns = () =>
  (review()?.grid ?? []).flatMap((cells) => (cells ?? []).filter((cell) => cell === OWN)).length;

/** Accepted is only what a line accepts: same sample, rule and value as stand in the sheet now. */
function acceptedRightly({ panes }: Scene): void {
  for (const { store } of panes) {
    const { checked, review: read } = store.get();
    if (!checked) continue;
    const { of } = reviewOf(checked, read);
    for (const finding of checked.result.findings) {
      const { decision, entry } = of(finding);
      if (decision !== "accepted") continue;
      const { results, reading } = checked.result;
      const { record, field } = finding;
      expect(entry).toMatchObject({
        decision: "accepted",
        rule: finding.rule,
        sample: record === null ? "" : results[record]!.sample,
      });
      if (record !== null && field !== null)
        expect(entry!.value).toBe(String(reading.cell(record, field) ?? ""));
    }
  }
}

test("nothing written is lost and nothing else is accepted, whatever is done around it", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(acts, { minLength: 4, maxLength: 14 }), async (steps) => {
      const scene = begin();
      await check(scene, 0);
      await check(scene, 1);
      let [lines, own] = [linesNow(), 0];
      for (const { name, act } of steps) {
        await act(scene);
        const now = linesNow();
        for (const line of lines) {
          const count = (all: string[]) => all.filter((one) => one === line).length;
          expect([name, line, count(now) >= count(lines)]).toEqual([name, line, true]);
        }
        expect(owns()).toBeGreaterThanOrEqual(own);
        [lines, own] = [now, owns()];
        acceptedRightly(scene);
      }
      const headings = Object.values(HEADINGS).sort().join("|");
      if (lines.length > 0) expect(lines.filter((line) => line === headings)).toHaveLength(1);
    }),
    { numRuns: 60 },
  );
}, 60_000);
