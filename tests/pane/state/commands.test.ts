import type { CellValue } from "../../../src/measure/cell-value";
import { Problem } from "../../../src/measure/problem";
import { say, sentenceOf } from "../../../src/messages/pane-catalogue";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { fakeHost, HEADER } from "../fake-host";

const ROWS: CellValue[][] = [
  HEADER,
  ["S-01", 6, 6, 16, 1],
  ["S-02", 6, 6, 16, "lots"],
  ["S-03", "six", 6, 16, 1],
];

function pane(cells = ROWS, top = 0, left = 0) {
  const fake = fakeHost(cells, top, left);
  const store = createPaneStore();
  return { ...fake, store, commands: paneCommands(store, fake.host) };
}

test("a check says what was checked and found", async () => {
  const { store, commands } = pane();
  await commands.check();
  expect(store.get().status).toBe("Checked: Loads!A1:E4. Tests: 3. Findings: 2.");
  expect(store.get()).toMatchObject({ error: "", work: undefined });
});

test("where a later check comes to nothing, the earlier one is said to be still shown", async () => {
  const cells = ROWS.map((row) => [...row]);
  const { store, commands } = pane(cells);
  await commands.check();
  cells[0] = [null, null, null, null, null];
  await commands.check();
  expect(store.get().error).toBe(
    `${say("no-header-row")} What is shown is still the earlier check of Loads!A1:E4.`,
  );
});

test("a finding leads to its cell, also where the table stands away from the corner", async () => {
  const title = ["Air tests", null, null, null, null];
  const { store, commands, asked } = pane([title, ...ROWS], 4, 2);
  await commands.check();
  for (const finding of store.get().checked!.result.findings) await commands.goTo(finding);
  // Title in row 5, header in row 6, foam of S-02 in G8, first reading of S-03 in D9.
  expect(asked.selected).toEqual([
    { sheetId: "s1", row: 7, column: 6 },
    { sheetId: "s1", row: 8, column: 3 },
  ]);
});

describe("after the sheet was changed, a finding", () => {
  /** Checks, changes the sheet, and goes to the finding in the foam of S-02. */
  async function goneTo(change: (cells: CellValue[][]) => void, rows = ROWS, which = 0) {
    const cells = rows.map((row) => [...row]);
    const opened = pane(cells);
    await opened.commands.check();
    const found = opened.store.get().checked!.result.findings;
    const finding = found.filter(({ field }) => field === "foam")[which];
    change(cells);
    await opened.commands.goTo(finding!);
    const { status, error } = opened.store.get();
    return { place: opened.asked.selected.at(-1), status, error };
  }

  test.each<[string, (cells: CellValue[][]) => void, row: number, column: number]>([
    ["sorted", (cells) => cells.push(...cells.splice(2, 1)), 3, 4],
    ["with a row inserted above", (cells) => cells.splice(1, 0, ["S-00", 6, 6, 16, 1]), 3, 4],
    ["with titles above", (cells) => cells.unshift(["Air tests", null, null, null, null]), 3, 4],
    ["with a column put in", (cells) => cells.forEach((row) => row.splice(1, 0, "x")), 2, 5],
  ])("%s, leads to its test and says where that is now", async (_, change, row, column) => {
    const { place, status, error } = await goneTo(change);
    expect(place).toEqual({ sheetId: "s1", row, column });
    expect(error).toBe("");
    expect(status).toBe(say("pane-test-moved", { row: 3, sample: "S-02", now: row + 1 }));
  });

  test("in a test that was edited leads to it by its sample, and says that it was edited", async () => {
    const edited = (cells: CellValue[][]) => {
      cells[2]![4] = 2;
      cells.push(...cells.splice(2, 1));
    };
    const { place, status } = await goneTo(edited);
    expect(place).toMatchObject({ row: 3, column: 4 });
    expect(status).toBe(say("pane-test-edited", { row: 3, sample: "S-02", now: 4 }));
  });

  test("of a test that is gone leads to no other without a word", async () => {
    const { error } = await goneTo((cells) => cells.splice(2, 1));
    expect(error).toBe(say("pane-test-gone", { row: 3, sample: "S-02" }));
  });

  test("of the second of two tests alike leads to the second", async () => {
    const alike = [...ROWS, [...ROWS[2]!]];
    const { place } = await goneTo((cells) => cells.splice(1, 1), alike, 1);
    // S-02 stood in the rows 3 and 5, and stands in the rows 2 and 4.
    expect(place).toMatchObject({ row: 3, column: 4 });
  });
});

describe("marking a sheet that was changed since the check", () => {
  test("checks it again first and marks what is found now", async () => {
    const cells = ROWS.map((row) => [...row]);
    const { store, commands, asked } = pane(cells);
    await commands.check();
    cells.push(...cells.splice(2, 1));
    await commands.mark();
    expect(asked.marks.map(({ row, column }) => [row, column])).toEqual([
      [2, 1],
      [3, 4],
    ]);
    expect(store.get().status).toContain(say("pane-checked-anew", { address: "Loads!A1:E4" }));
  });

  test("begins over again where it is changed at that moment, and gives up with a sentence", async () => {
    const { store, commands, host } = pane();
    await commands.check();
    const mark = host.mark;
    let refused = 0;
    host.mark = async (...given) => {
      refused += 1;
      if (refused < 3) throw new Problem("table-changed");
      return mark(...given);
    };
    await commands.mark();
    expect(store.get().status).toContain("Marked cells: 2.");
    host.mark = () => Promise.reject(new Problem("table-changed"));
    await commands.mark();
    expect(store.get().error).toBe(say("table-changed"));
  });

  test("writes results of what stands there now", async () => {
    const cells = ROWS.map((row) => [...row]);
    const { store, commands, host } = pane(cells);
    const write = jest.spyOn(host, "writeResultsSheet");
    await commands.check();
    cells.splice(1, 1);
    await commands.writeResultsSheet();
    // The foam of S-02 stands in row 2 now.
    expect(write.mock.calls[0]![1][1]).toEqual(expect.arrayContaining([2, "S-02"]));
    expect(store.get().status).toContain(say("pane-checked-anew", { address: "Loads!A1:E3" }));
  });
});

test("what was not read beside and below the checked cells is said", async () => {
  const { store, commands, host } = pane();
  const read = host.read;
  host.read = async (scope) => ({
    ...(await read(scope)),
    cut: ["top", "bottom"],
    below: { row: 4, rows: 3 },
    beside: [{ column: 7, columns: 20 }],
  });
  // Below stand words, and no test.
  host.readAgain = async (before) => ({
    ...before,
    values: Array.from({ length: before.area.rows }, () => ["for the north yard"]),
  });
  await commands.check();
  expect(store.get().status).toContain(say("pane-not-read-below", { from: 5, to: 7 }));
  expect(store.get().status).toContain(say("pane-columns-not-read", { from: "H", to: "AA" }));
  expect(store.get().status).toContain(say("pane-not-read-above"));
});

test("marks carry weight and sentence, and the spreadsheet's remarks are passed on", async () => {
  const { store, commands, asked } = pane();
  await commands.check();
  await commands.mark();
  expect(asked.marks).toEqual([
    expect.objectContaining({ row: 2, column: 4, weight: "error" }),
    expect.objectContaining({ row: 3, column: 1, weight: "error" }),
  ]);
  expect(asked.marks[0]!.sentences[0]).toMatch(/^Foam: “lots” is not a number/);
  expect(store.get().status).toBe("Marked cells: 2. With a note: 0. A remark of the spreadsheet.");
});

test("more findings are marked than a call takes arguments", async () => {
  const many = Array.from({ length: 45_000 }, (_, i) => [`S-${i}`, "six", "six", "lots", "lots"]);
  const { store, commands, asked } = pane([HEADER, ...many]);
  await commands.check();
  await commands.mark();
  expect(store.get().error).toBe("");
  expect(asked.marks).toHaveLength(store.get().checked!.result.findings.length);
  expect(asked.marks.length).toBeGreaterThan(130_000);
}, 60_000);

test("marking after nothing was found renews the checked sheet, so that earlier marks go", async () => {
  const { commands, asked } = pane(ROWS.slice(0, 2));
  await commands.check();
  await commands.mark();
  expect(asked).toMatchObject({ marks: [], markedSheet: "s1" });
});

test("after a further check it is said that the marks are older, until they are gone", async () => {
  const { store, commands } = pane();
  await commands.check();
  await commands.mark();
  await commands.checkAgain();
  expect(store.get().status).toContain(say("pane-marks-are-older"));
  await commands.unmark();
  await commands.checkAgain();
  expect(store.get().status).not.toContain(say("pane-marks-are-older"));
});

test("without a check there is nothing to mark or write", async () => {
  const { commands, asked, host } = pane();
  const write = jest.spyOn(host, "writeResultsSheet");
  await commands.mark();
  await commands.writeResultsSheet();
  expect(asked.marks).toEqual([]);
  expect(write).not.toHaveBeenCalled();
});

test("marks are taken off without a check, and the results sheet is named", async () => {
  const { store, commands } = pane();
  await commands.unmark();
  expect(store.get().status).toBe("Marks removed: 3. Notes removed: 2.");
  await commands.check();
  await commands.writeResultsSheet();
  expect(store.get().status).toBe("The results are on the sheet “Findings 2”.");
});

test("a selected column is taken for the trend, and anything wider is not", async () => {
  const { store, commands, asked } = pane(ROWS.map((row) => [row[1]!]));
  await commands.takeTrendColumn();
  expect(asked.scopes).toEqual(["selection"]);
  expect(store.get().trendColumn!.read.address).toBe("Loads!A1:A4");
  const wide = pane();
  await wide.commands.takeTrendColumn();
  expect(wide.store.get()).toMatchObject({
    trendColumn: undefined,
    error: say("trend-one-column"),
  });
});

test("selected cells are checked as they are; one selected cell means the table around it", async () => {
  const { store, commands, asked, host, whole } = pane();
  const readTable = host.read;
  host.read = async (scope) => {
    const read = await readTable(scope);
    if (scope === "table") return read;
    return { ...read, area: { ...whole(), rows: 1, columns: 1 }, values: [["Sample"]] };
  };
  await commands.checkSelection();
  expect(asked.scopes).toEqual(["selection", "table"]);
  expect(store.get().checked!.result.results).toHaveLength(3);
});

test.each([
  ["a problem of the host", new Problem("selection-in-parts"), say("selection-in-parts")],
  ["an error that is not ours", new Error("RichApi.Error 0x80"), say("pane-unexpected")],
  ["whatever else is thrown", "raw text", say("pane-unexpected")],
])("%s becomes one sentence of ours, and the earlier check stays", async (_, thrown, sentence) => {
  const { store, commands, host } = pane();
  await commands.check();
  const before = store.get().checked;
  host.read = () => Promise.reject(thrown);
  await commands.check();
  const shown = say("pane-still-shown", { address: "Loads!A1:E4" });
  expect(store.get()).toMatchObject({
    error: `${sentence} ${shown}`,
    status: "",
    work: undefined,
  });
  expect(store.get().checked).toBe(before);
});

test.each([
  ["headers alone", [HEADER], "no-tests-below"],
  ["headers over blank rows", [HEADER, [null, "", " ", null, null]], "no-tests-below"],
  ["no headers", [["S-01", 6, 6, 16, 1]], "no-header-row"],
  [
    "no readings",
    [
      ["Load", "Mix", "Date", "", ""],
      ["L1", "LW", 46172, null, null],
    ],
    "no-readings-column",
  ],
] as const)("%s: a sentence says so", async (_, cells, id) => {
  const { store, commands } = pane(cells.map((row) => [...row]));
  await commands.check();
  expect(store.get().error).toBe(say(id));
});

test("limits are taken from the pane only where the sheet has none", async () => {
  const { store, commands } = pane([
    [...HEADER, "Low"],
    ...ROWS.slice(1).map((row) => [...row, 5]),
  ]);
  store.set({ low: "6.5", high: "5.5" });
  await commands.check();
  // S-01 has 6.00 %: the sheet's own low limit of 5 holds, the high one is from the pane.
  expect(store.get().checked!.result.results[0]!.limits).toEqual({ low: 5, high: 5.5 });
});

test("a limit that is not a number is said with its label", async () => {
  const { store, commands } = pane();
  store.set({ low: "four" });
  await commands.check();
  expect(store.get().error).toBe(sentenceOf("not-a-number", { value: "four" }, "Low limit, %"));
});

test("long work can be stopped, and the earlier check stays", async () => {
  const many = Array.from({ length: 20_000 }, (_, i) => [`S-${i}`, 6, 6, 16, i % 4]);
  const { store, commands } = pane([HEADER, ...many]);
  const shares: number[] = [];
  store.watch(
    ({ work }) => work?.share,
    (share) => {
      if (share === undefined) return;
      shares.push(share);
      commands.stop();
    },
  );
  await commands.check();
  expect(shares.length).toBe(1);
  expect(store.get()).toMatchObject({ checked: undefined, error: "", status: say("pane-stopped") });
});

test("a second command waits for nothing and does nothing while one is under way", async () => {
  const { commands, asked } = pane();
  const both = [commands.check(), commands.check()];
  expect(await Promise.all(both)).toEqual([true, false]);
  expect(asked.scopes).toHaveLength(1);
});

test("a check once more takes in rows that were added below", async () => {
  const cells = [...ROWS];
  const { store, commands } = pane(cells);
  await commands.check();
  cells.push(["S-04", 6, 6, 16, "some"]);
  await commands.checkAgain();
  expect(store.get().status).toBe(
    "Checked: Loads!A1:E5. Tests: 4. Findings: 3. New findings: 1. No longer found: 0.",
  );
});

test("a chart is offered only where the spreadsheet draws charts", async () => {
  const { store, host, commands } = pane();
  expect(commands.addChart).toBeUndefined();
  const drawing = paneCommands(store, { ...host, addChart: async ({ sheetName }) => sheetName });
  await drawing.addChart!({ sheetName: "Trend", title: "Air", names: [], lines: [] });
  expect(store.get().status).toBe("The chart is on the sheet “Trend”.");
});
