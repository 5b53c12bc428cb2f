import { excelHost } from "../../../src/hosts/excel/excel-host";
import { say } from "../../../src/messages/pane-catalogue";
import { paneCommands, type PaneCommands } from "../../../src/pane/state/commands";
import { createPaneStore, type PaneStore } from "../../../src/pane/state/pane-state";
import { reviewOf } from "../../../src/pane/state/review/review-of";
import { HEADINGS, REVIEW_SHEET } from "../../../src/review/review-entry";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import type { FailureMoment } from "../../excel-client/emulated-excel";
import type { Held, SheetModel } from "../../excel-client/sheet-model";
import {
  deleteRows,
  edit,
  insertColumns,
  insertRows,
  sortRows,
} from "../../excel-client/user-edits";
import { WorkbookModel } from "../../excel-client/workbook-model";

/*
 * The review on the Excel host: its sheet is only ever added to, whoever does what around it, and what was decided
 * is found again. Expected is what docs/review.md promises.
 */

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (oz)", "Reported air"];
/** By hand: 5 and 5 with 32 oz (2 pt, no correction) is 5.00, so 6 and 7 are reported wrongly. */
const LOADS: Held[][] = [
  ["L-1", 5, 5, 32, 5],
  ["L-2", 5, 5, 32, 6],
  ["L-3", 5, 5, 32, 7],
  ["L-4", 5, 5, 32, 5],
];

const excel = startExcel();
afterAll(untilReleased);
let loads: SheetModel;
let store: PaneStore;
let commands: PaneCommands;

beforeEach(async () => {
  excel.workbook = new WorkbookModel();
  loads = excel.workbook.front;
  loads.grid = [HEADERS, ...LOADS];
  ({ store, commands } = openPane());
  await check();
});

function openPane(initials = "KR"): { store: PaneStore; commands: PaneCommands } {
  const opened = createPaneStore();
  opened.set({ initials });
  return { store: opened, commands: paneCommands(opened, excelHost()) };
}

async function check(): Promise<void> {
  excel.workbook.select(loads, { top: 1, left: 0, bottom: 1, right: 0 });
  await commands.check();
}

const reviewSheet = () => excel.workbook.sheets.find(({ name }) => name === REVIEW_SHEET);
const lines = () => (reviewSheet()?.grid ?? []).map((row) => [...(row ?? [])]);
const cellsOf = (heading: keyof typeof HEADINGS) => {
  const [headers, ...rows] = lines();
  return rows.map((row) => row[headers!.indexOf(HEADINGS[heading])]);
};

function wrongAir(sample: string, of = store) {
  const { result } = of.get().checked!;
  return result.findings.find(
    ({ rule, record }) =>
      rule === "reported-air-wrong" && result.results[record!]!.sample === sample,
  )!;
}

function decisions(of = store): Record<string, string> {
  const { checked, review } = of.get();
  const { of: decided } = reviewOf(checked!, review);
  const { findings, results } = checked!.result;
  const wrong = findings.filter(({ rule }) => rule === "reported-air-wrong");
  return Object.fromEntries(
    wrong.map((finding) => [results[finding.record!]!.sample, decided(finding).decision]),
  );
}

const accept = (sample: string, reason = "seen on site", pane = { store, commands }) =>
  pane.commands.decide([wrongAir(sample, pane.store)], "accepted", reason);

test("a decision makes the sheet, with the sheet of tests still in front, and is found again", async () => {
  await accept("L-2", "=1+1");
  expect(store.get()).toMatchObject({ error: "" });
  expect(excel.workbook.front).toBe(loads);
  expect(lines()[0]).toEqual(Object.values(HEADINGS));
  expect(cellsOf("reason")).toEqual(["=1+1"]);
  expect([cellsOf("place"), cellsOf("value"), cellsOf("initials")]).toEqual([
    ["E3"],
    ["6"],
    ["KR"],
  ]);
  expect(reviewSheet()!.formulas).toEqual([]);
  await check();
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "open" });
});

test("nothing is written without initials, or accepted without a reason", async () => {
  store.set({ initials: " " });
  await accept("L-2");
  expect(store.get().error).toBe(say("review-initials-missing"));
  store.set({ initials: "KR" });
  await accept("L-2", "  ");
  expect(store.get().error).toBe(say("review-reason-missing"));
  expect(reviewSheet()).toBeUndefined();
});

test("the same click twice writes one line", async () => {
  await accept("L-2");
  await accept("L-2");
  expect(store.get().status).toBe(say("review-recorded-before", { sheet: REVIEW_SHEET }));
  expect(lines()).toHaveLength(2);
});

test("a changed value opens it again, and rows that moved keep their decisions", async () => {
  await accept("L-2");
  await accept("L-3");
  sortRows(loads, { top: 1, left: 0, bottom: 4, right: 4 }, 4);
  insertRows(loads, 1, 1);
  edit(loads, 1, 0, "L-0");
  await check();
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "accepted" });
  const row = loads.grid.findIndex((cells) => cells?.[0] === "L-3");
  edit(loads, row, 4, 6.5);
  await check();
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "open" });
});

test("a table that changed between the check and the click is checked anew first", async () => {
  edit(loads, 2, 4, 6.25);
  await accept("L-2");
  expect(store.get().error).toBe(say("review-finding-gone"));
  expect(reviewSheet()).toBeUndefined();
  insertRows(loads, 1, 1);
  edit(loads, 1, 0, "L-0");
  await accept("L-3");
  expect([cellsOf("sample"), cellsOf("place")]).toEqual([["L-3"], ["E5"]]);
});

test("of two tests of one name only the one at its place is accepted", async () => {
  edit(loads, 2, 0, "L-3");
  edit(loads, 2, 4, 7);
  await check();
  const both = store
    .get()
    .checked!.result.findings.filter(({ rule }) => rule === "reported-air-wrong");
  await commands.decide([both[1]!], "accepted", "seen");
  await check();
  const { checked, review } = store.get();
  const { counts } = reviewOf(checked!, review);
  expect(counts.accepted).toBe(1);
  expect(cellsOf("place")).toEqual(["E4"]);
});

test("what the user adds to the sheet, moves and sorts there stays, and lines come below it", async () => {
  await accept("L-2");
  const sheet = reviewSheet()!;
  insertRows(sheet, 0, 2);
  insertColumns(sheet, 1, 1);
  edit(sheet, 0, 0, "Review of May");
  edit(sheet, 2, 1, "asked");
  edit(sheet, 3, 1, "lab");
  edit(sheet, 6, 4, "to be told at the meeting");
  const before = structuredClone(sheet.grid);
  await accept("L-3");
  expect(store.get().error).toBe("");
  expect(sheet.grid.slice(0, before.length)).toEqual(before);
  expect(sheet.grid).toHaveLength(before.length + 1);
  await check();
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "accepted" });
});

test("a decision changed by hand is read, and one that is none is said", async () => {
  await accept("L-2");
  await accept("L-3");
  const at = Object.keys(HEADINGS).indexOf("decision");
  edit(reviewSheet()!, 1, at, "open");
  edit(reviewSheet()!, 2, at, "fine");
  await check();
  expect(decisions()).toEqual({ "L-2": "open", "L-3": "open" });
  const problems = store.get().review.problems.map(({ id, values }) => [id, values.line]);
  expect(problems).toEqual([["review-decision-unknown", 3]]);
});

test("a sheet of that name that is not ours is left alone, and said", async () => {
  const own = excel.workbook.addSheet("fresh REVIEW");
  own.grid = [["What I think"], ["All is well"]];
  await check();
  expect(store.get().review.problems.map(({ id }) => id)).toEqual(["review-sheet-not-ours"]);
  await accept("L-2");
  expect(store.get().error).toContain("holds something else");
  expect(own.grid).toEqual([["What I think"], ["All is well"]]);
  expect(excel.workbook.sheets).toHaveLength(2);
});

test("a protected sheet is said to be protected, and nothing is taken for recorded", async () => {
  await accept("L-2");
  reviewSheet()!.protection.protected = true;
  await accept("L-3");
  expect(store.get().error).toBe(say("sheet-protected"));
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "open" });
  expect(lines()).toHaveLength(2);
});

test("a deleted sheet is missed, and the next decision begins a new one", async () => {
  await accept("L-2");
  excel.workbook.sheets.splice(1, 1);
  await check();
  expect(store.get().status).toContain(say("review-gone", { sheet: REVIEW_SHEET }));
  expect(decisions()).toEqual({ "L-2": "open", "L-3": "open" });
  await accept("L-3");
  expect(cellsOf("sample")).toEqual(["L-3"]);
});

test("decisions of a sheet that was renamed come back once the user says so", async () => {
  await accept("L-2");
  loads.name = "Week 22";
  await check();
  expect(decisions()).toEqual({ "L-2": "open", "L-3": "open" });
  expect(store.get().review.otherSheets).toEqual([{ name: "Loads", count: 1 }]);
  await commands.recordRenamed("Loads");
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "open" });
  expect(store.get().review.otherSheets).toEqual([]);
});

test("a copy of the sheet has no decisions, and the first one keeps its own", async () => {
  await accept("L-2");
  const copy = excel.workbook.addSheet("Loads (2)");
  copy.grid = [...loads.grid];
  const first = loads;
  loads = copy;
  await check();
  expect(decisions()).toEqual({ "L-2": "open", "L-3": "open" });
  loads = first;
  await check();
  expect(decisions()).toEqual({ "L-2": "accepted", "L-3": "open" });
});

test("the review is not taken for a sheet of tests", async () => {
  await accept("L-2");
  excel.workbook.select(reviewSheet()!, { top: 1, left: 3, bottom: 1, right: 3 });
  await commands.check();
  expect(store.get().elsewhere.map(({ sheetName }) => sheetName)).toEqual(["Loads"]);
});

describe("a correction", () => {
  test("in the cell is noticed, offered with its old and new value, and recorded on a click", async () => {
    edit(loads, 2, 4, 5);
    await commands.checkAgain();
    expect(store.get().corrections).toMatchObject([
      { subject: { sample: "L-2", place: "E3", value: "6" }, oldValue: "6", newValue: "5" },
    ]);
    expect(reviewSheet()).toBeUndefined();
    await commands.recordCorrections(store.get().corrections);
    expect([cellsOf("decision"), cellsOf("oldValue"), cellsOf("newValue")]).toEqual([
      ["corrected"],
      ["6"],
      ["5"],
    ]);
    expect(store.get().corrections).toEqual([]);
    const { checked, review } = store.get();
    expect(reviewOf(checked!, review).counts).toMatchObject({ corrected: 1 });
  });

  test("in another cell of the test is said with its header", async () => {
    // By hand: 64 oz are 4 pt, 0.6 off; 6.75 − 0.6 = 6.15, to the nearest 0.25 is 6.25, not 6.
    loads.grid[2] = ["L-2", 6.75, 6.75, 64, 6.25];
    await commands.checkAgain();
    expect(store.get().corrections).toMatchObject([
      {
        oldValue: "First reading: 5; Second reading: 5; Alcohol (oz): 32; Reported air: 6",
        newValue: "First reading: 6.75; Second reading: 6.75; Alcohol (oz): 64; Reported air: 6.25",
      },
    ]);
  });

  test("that is undone is offered no more, and one that is none stays away", async () => {
    edit(loads, 2, 4, 5);
    await commands.checkAgain();
    edit(loads, 2, 4, 6);
    await commands.checkAgain();
    expect(store.get().corrections).toEqual([]);
    edit(loads, 2, 4, 5);
    await commands.checkAgain();
    commands.dismissCorrection(store.get().corrections[0]!);
    await commands.checkAgain();
    expect(store.get().corrections).toEqual([]);
    expect(reviewSheet()).toBeUndefined();
  });

  test("made on another day is noticed against what was written down", async () => {
    await commands.decide([wrongAir("L-2")], "open", "ask the lab");
    edit(loads, 2, 4, 5);
    ({ store, commands } = openPane("TM"));
    await check();
    expect(store.get().corrections).toMatchObject([{ oldValue: "6", newValue: "5" }]);
  });

  test("that only moved rows or deleted the test is none", async () => {
    sortRows(loads, { top: 1, left: 0, bottom: 4, right: 4 }, 4);
    await commands.checkAgain();
    deleteRows(loads, 3, 1);
    await commands.checkAgain();
    expect(store.get().corrections).toEqual([]);
  });
});

describe("two panes at once", () => {
  /** Calls of Excel that one decision takes, when the sheet is there. */
  async function callsOfADecision(): Promise<number> {
    await accept("L-2");
    excel.startCounting();
    await accept("L-3");
    return excel.traffic.calls;
  }

  test("both write, at any moment of each other's writing, and nothing is lost", async () => {
    const calls = await callsOfADecision();
    expect(calls).toBeGreaterThan(3);
    for (let call = 1; call <= calls; call += 1) {
      await prepare();
      const sheet = reviewSheet()!;
      const others = ["line of the other pane", ...Array<Held>(13).fill("x")];
      excel.interrupt(call, () => {
        sheet.grid.push(others);
      });
      await accept("L-3");
      excel.takeBackInterruptions();
      expect(lines().filter((line) => line[0] === others[0])).toEqual([others]);
      expect(cellsOf("sample")).toContain("L-3");
    }
  });

  test("a column put in at any moment puts no cell below a wrong heading", async () => {
    const calls = await callsOfADecision();
    for (let call = 1; call <= calls; call += 1) {
      await prepare();
      excel.interrupt(call, () => insertColumns(reviewSheet()!, 0, 1));
      await accept("L-3");
      excel.takeBackInterruptions();
      // In the midst of reading, half a table is seen: it is refused, and done on the next click.
      if (store.get().error !== "") {
        expect(lines()).toHaveLength(2);
        await accept("L-3");
      }
      const samples = cellsOf("sample").filter((sample) => sample !== "");
      expect(samples).toEqual(["L-2", "L-3"]);
      expect(lines().filter((line) => line.some((cell) => cell !== ""))).toHaveLength(3);
    }
  });

  test("that both begin the sheet leave one sheet with both decisions", async () => {
    for (let call = 1; call <= 8; call += 1) {
      await prepare(false);
      excel.interrupt(call, () => {
        if (reviewSheet()) return;
        const other = excel.workbook.addSheet(REVIEW_SHEET);
        other.grid = [Object.values(HEADINGS), Array<Held>(14).fill("x")];
      });
      await accept("L-3");
      excel.takeBackInterruptions();
      if (excel.workbook.sheets.length === 1) continue;
      expect(excel.workbook.sheets).toHaveLength(2);
      expect(cellsOf("sample")).toContain("L-3");
    }
  });

  async function prepare(begun = true): Promise<void> {
    excel.workbook = new WorkbookModel();
    loads = excel.workbook.front;
    loads.grid = [HEADERS, ...LOADS];
    ({ store, commands } = openPane());
    await check();
    if (begun) await accept("L-2");
  }
});

test("whatever call fails, at whatever moment, what stood there stays and the decision can be made again", async () => {
  await accept("L-2");
  const before = structuredClone(reviewSheet()!.grid);
  excel.startCounting();
  await commands.decide([wrongAir("L-3")], "open", "first");
  const { calls } = excel.traffic;
  for (const moment of ["before", "halfway", "after"] as FailureMoment[]) {
    for (let call = 1; call <= calls; call += 1) {
      const sheet = reviewSheet()!;
      sheet.grid = structuredClone(before);
      await check();
      excel.failCall(call, "GeneralException", moment);
      await accept("L-3");
      excel.takeBackFailure();
      expect(sheet.grid.slice(0, 2)).toEqual(before);
      if (store.get().error === "") continue;
      await accept("L-3");
      expect(store.get().error).toBe("");
      expect(cellsOf("sample").filter((sample) => sample === "L-3").length).toBe(1);
    }
  }
});
