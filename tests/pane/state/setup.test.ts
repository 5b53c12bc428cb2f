import { check as checkInCells } from "../../../src/functions/field-sheet";
import { checkedRows } from "../../../src/fieldsheet/result-tables";
import type { CellValue } from "../../../src/measure/cell-value";
import { readSetup } from "../../../src/reading/setup/setup";
import { paneCommands } from "../../../src/pane/state/commands";
import { createPaneStore } from "../../../src/pane/state/pane-state";
import { settingNames } from "../../../src/pane/state/setup/choices";
import { unreadLines } from "../../../src/pane/state/setup/column-lines";
import { newSetupSheet } from "../../../src/pane/state/setup/new-setup-sheet";
import { takenForWords } from "../../../src/pane/state/setup/setup-words";
import { LANGUAGES } from "../../../src/messages/language";
import { spanish } from "../../../src/messages/spanish";
import { learn, speak } from "../../../src/messages/speech";
import { FIELDS, type FieldId } from "../../../src/reading/fields";
import { fakeHost } from "../fake-host";
import "../../functions/custom-functions-runtime";

const NAME = "Fresh setup";
/** "Pointer A" and "Pointer B" say nothing that is known; 6 and 6.25 with 48 oz give 6.00 (0.30 taken off 6.25). */
const HEADERS = ["Sample", "Mix", "Pointer A", "Pointer B", "Spirit"];
const DAY = (): CellValue[][] => [
  [...HEADERS],
  ["S-1", "LW-4", 6, 6.25, 48],
  ["S-2", "lw-4", 8, 8, 16],
  ["S-3", "NW-5", 5, 5, 16],
];
const DIALS = [
  { header: "Pointer A", field: "first" as const },
  { header: "Pointer B", field: "second" as const },
  { header: "Spirit", field: "alcohol" as const, unit: "oz" },
];

function open(cells = DAY(), setup?: CellValue[][]) {
  const { host, others: sheets } = fakeHost(cells);
  if (setup)
    sheets.set(
      NAME,
      setup.map((row) => [...row]),
    );
  const pane = () => {
    const store = createPaneStore();
    return { store, commands: paneCommands(store, host) };
  };
  const air = (store: ReturnType<typeof createPaneStore>) =>
    store.get().checked?.result.results.map((each) => [each.state, each.air, each.specification]);
  return { ...pane(), another: pane, host, sheets, air };
}

async function withDialsKept() {
  const opened = open([
    ["Sample", "Mix", "First reading", "Second reading", "Spirit"],
    ...DAY().slice(1),
  ]);
  await opened.commands.checkSelection();
  for (const choice of [DIALS[2]!, { header: "Sample", field: "not ours" as const }])
    await opened.commands.choose(choice);
  await opened.commands.keepSetup();
  return opened;
}

describe("what the user says of columns", () => {
  test("holds for the check at once, is kept on a new sheet, and is found by the next pane", async () => {
    const { store, commands, sheets, another, air } = open();
    await commands.checkSelection();
    // Nothing is read yet, and the columns are shown to say what they hold.
    expect(store.get().error).not.toBe("");
    const lines = unreadLines(store.get().unread!, readSetup([]));
    expect(lines.map(({ place, name }) => [place, name])).toEqual(
      HEADERS.map((header, i) => ["ABCDE"[i], header]),
    );
    for (const choice of DIALS) await commands.choose(choice);
    expect(store.get()).toMatchObject({ error: "", unread: undefined });
    const expected = [
      ["valid", 6, undefined],
      ["valid", 8, undefined],
      ["valid", 5, undefined],
    ];
    expect(air(store)).toEqual(expected);
    await commands.keepSetup();
    expect(store.get()).toMatchObject({ error: "", status: `Kept on the sheet “${NAME}”: 3.` });
    expect(store.get().choices.size).toBe(0);
    expect(readSetup(sheets.get(NAME)!)).toMatchObject({ columns: DIALS, issues: [], scaleEnd: 9 });
    const next = another();
    await next.commands.check();
    expect(air(next.store)).toEqual(expected);
  });

  test("changes the line of its header and adds others; rows, columns and notes of the user stay", async () => {
    const own: CellValue[][] = [
      ["Note of the lab: ask Tallow", null, null, null, null],
      ["Header", "Who", "Taken for", "Unit", "Note"],
      ["Pointer B", "A. Brinnock", "first reading", null, "sorted by hand"],
      ["Pointer A", "T. Ostrander", "second reading", null, null],
      [null, null, null, null, null],
      [null, null, null, null, "a remark of their own"],
    ];
    const { store, commands, sheets } = open(DAY(), own);
    await commands.checkSelection();
    for (const choice of DIALS) await commands.choose(choice);
    await commands.keepSetup();
    expect(store.get().error).toBe("");
    const now = sheets.get(NAME)!;
    expect(now.slice(0, 4)).toEqual([
      own[0],
      own[1],
      ["Pointer B", "A. Brinnock", "second reading", "", "sorted by hand"],
      ["Pointer A", "T. Ostrander", "first reading", "", null],
    ]);
    expect(now[4]!.slice(0, 4)).toEqual(["Spirit", null, "alcohol", "oz"]);
    expect(now[5]![4]).toBe("a remark of their own");
  });

  test("goes below everything, under headings of its own, where there is no room", async () => {
    const own: CellValue[][] = [
      ["Header", "Taken for", "Unit"],
      ["Remarks", "not ours", null],
      ["Mix", "Low", "High"],
      ["LW-4", 4.5, 7.5],
    ];
    const { commands, sheets } = open(DAY(), own);
    await commands.checkSelection();
    for (const choice of DIALS) await commands.choose(choice);
    await commands.keepSetup();
    const now = sheets.get(NAME)!;
    expect(now.slice(0, 4)).toEqual(own);
    const setup = readSetup(Array.from(now, (row) => row ?? []));
    expect(setup.columns).toEqual([{ header: "Remarks", field: "not ours" }, ...DIALS]);
    expect(setup.specificationFor("LW-4")).toMatchObject({ air: { low: 4.5, high: 7.5 } });
  });

  test("as found takes a kept line back without deleting it", async () => {
    const { store, commands, sheets } = await withDialsKept();
    await commands.choose({ header: "Sample", field: "as found" });
    expect(store.get().checked!.result.columns.sample?.header).toBe("Sample");
    await commands.keepSetup();
    expect(readSetup(sheets.get(NAME)!).columns.map(({ header }) => header)).toEqual(["Spirit"]);
    expect(sheets.get(NAME)!.flat()).toContain("As found");
  });

  test("of a unit for which the table has no column is not kept, and that is said", async () => {
    const own: CellValue[][] = [
      ["Header", "Taken for"],
      ["Pointer A", "first"],
      ["Pointer B", "second"],
    ];
    const { store, commands, sheets } = open(DAY(), own);
    await commands.checkSelection();
    await commands.choose(DIALS[2]!);
    await commands.keepSetup();
    expect(store.get().error).toMatch(/no column for the unit/);
    expect(sheets.get(NAME)).toEqual(own);
    expect(store.get().choices.size).toBe(1);
  });
});

test("a header that two columns have names neither, and the titles above tell them apart", () => {
  const columns = [
    ["Air", "R"],
    ["Air", "R"],
    ["Slump", "R"],
    ["", "Mix"],
    ["", ""],
  ];
  const names = settingNames(
    columns.map((headers) => ({ headers, cells: [] })),
    readSetup([
      ["Header", "Taken for"],
      [" MIX", "load"],
    ]),
  );
  expect(names).toEqual([undefined, undefined, "Slump R", "MIX", undefined]);
});

test.each(LANGUAGES)(
  "what a new sheet says in %s is read back, every field and heading",
  (language) => {
    learn("es", spanish);
    speak({ language });
    try {
      const ids = Object.keys(FIELDS) as FieldId[];
      const fields = [...ids, "not ours" as const];
      const columns = fields.map((field) => ({
        header: `of ${field}`,
        "taken for": takenForWords(field),
      }));
      const taken = { header: "taken back", "taken for": takenForWords("as found") };
      const units = { density: "kg/m³", slump: "mm", temperature: "°C" };
      const line = {
        mix: "A",
        "air target": 6,
        "air tolerance": 1.5,
        aggregate: "shale",
        aggregateSize: "19 mm",
        exposure: "F2",
        "density low": 1800,
        "slump high": 120,
        "temperature low": 10,
        source: "S-1",
      };
      const setup = readSetup(
        newSetupSheet({
          columns: [...columns, taken],
          mixes: [line],
          units,
          scaleEnd: 10,
          datesFrom: 1904,
        }),
      );
      expect(setup.issues).toEqual([]);
      expect(setup.columns.map(({ field }) => field)).toEqual(fields);
      expect(setup).toMatchObject({ scaleEnd: 10, datesFrom: 1904, everywhere: {} });
      expect(setup.specificationFor("A")).toEqual({
        mix: "A",
        air: { low: 4.5, high: 7.5 },
        densityUnit: "kg/m³",
        values: {
          aggregate: "shale",
          aggregateSize: { size: 19, unit: "mm" },
          densityLow: 1800,
          slumpHigh: { value: 120, unit: "mm" },
          temperatureLow: { value: 10, unit: "°C" },
        },
      });
    } finally {
      speak({ language: "en" });
    }
  },
);

describe("the setup sheet", () => {
  test("of that name that holds something else is left alone, and that is said", async () => {
    const other: CellValue[][] = [["Cutting list"], ["Rebar", 12]];
    const { store, commands, sheets } = open(DAY(), other);
    await commands.choose(DIALS[0]!);
    await commands.checkSelection();
    await commands.keepSetup();
    expect(store.get().error).toMatch(/holds no table of a setup/);
    expect(sheets.get(NAME)).toEqual([["Cutting list"], ["Rebar", 12]]);
  });

  test("that is bare is filled", async () => {
    const { commands, sheets } = open(DAY(), []);
    await commands.checkSelection();
    await commands.choose(DIALS[0]!);
    await commands.keepSetup();
    expect(readSetup(sheets.get(NAME)!).columns).toEqual([DIALS[0]]);
  });

  test("deleted between two clicks is said, and keeping again makes a new one", async () => {
    const { store, commands, sheets } = await withDialsKept();
    sheets.delete(NAME);
    await commands.checkSelection();
    expect(store.get().status).toMatch(/not in the workbook any more/);
    await commands.choose(DIALS[2]!);
    await commands.keepSetup();
    expect(store.get().error).toBe("");
    expect(readSetup(sheets.get(NAME)!).columns).toEqual([DIALS[2]]);
  });

  test("edited by hand is read with the next check; a line that does not fit is said", async () => {
    const { store, commands, sheets } = await withDialsKept();
    sheets.get(NAME)!.push(["Pointer Z", "foam", null], ["Spirit", "water", "oz"]);
    await commands.checkSelection();
    const said = store
      .get()
      .checked!.result.findings.filter(({ rule }) => rule === "setup-not-applied");
    expect(said.map(({ say }) => say)).toEqual(["setup-header-twice", "setup-header-missing"]);
  });

  test("written by two panes keeps what both have said", async () => {
    const { commands, sheets, another } = await withDialsKept();
    const other = another();
    await other.commands.checkSelection();
    await other.commands.choose({ header: "Mix", field: "not ours" });
    await commands.choose({ header: "Sample", field: "load" });
    await commands.keepSetup();
    await other.commands.keepSetup();
    const fields = readSetup(sheets.get(NAME)!).columns.map(({ header, field }) => [header, field]);
    expect(fields).toEqual([
      ["Spirit", "alcohol"],
      ["Sample", "load"],
      ["Mix", "not ours"],
    ]);
  });
});

describe("mixes", () => {
  const KNOWN = (): CellValue[][] => [
    ["Sample", "Mix", "First reading", "Second reading", "Alcohol (oz)"],
    ...DAY().slice(1),
  ];
  // ACI 318-19 Table 19.3.3.1, F2, 3/4 in: 6.0 % (two copies).
  const FROM = { table: "ACI 318-19", exposure: "F2", size: "3/4 in" };

  test("are added once each, in whatever letters, and compared at once", async () => {
    const { store, commands, sheets, air } = open(KNOWN());
    await commands.checkSelection();
    await commands.addMixes(FROM);
    expect(store.get().status).toMatch(/mixes added: 2; specified air filled in: 2/);
    const { specificationFor, issues } = readSetup(sheets.get(NAME)!);
    expect(issues).toEqual([]);
    expect(specificationFor("LW-4")).toMatchObject({
      air: { low: 4.5, high: 7.5 },
      values: { aggregateSize: { size: 0.75, unit: "in" } },
    });
    expect(sheets.get(NAME)!.flat()).toContain("ACI 318-19; ± 1.5 as usual, from memory");
    expect(air(store)!.map(([, , specification]) => specification)).toEqual([
      "within",
      "above",
      "within",
    ]);
    await commands.addMixes(FROM);
    expect(store.get().status).toMatch(/^Every mix of these tests is in the setup already/);
  });

  test("without a table asked for get a line without limits, which specifies nothing and says so", async () => {
    const { store, commands, sheets } = open(KNOWN());
    await commands.checkSelection();
    await commands.addMixes(undefined);
    const setup = readSetup(sheets.get(NAME)!);
    expect([setup.issues, setup.limitsAir]).toEqual([[], false]);
    expect(store.get().checked!.result.notLookedAt).toContain("limits");
  });

  test("that people have given limits keep them, and an exposure in the line goes before the chosen one", async () => {
    const own: CellValue[][] = [
      ["Mix", "Target", "Tolerance", "Low", "High", "Aggregate size", "Exposure", "Source"],
      ["LW-4", null, null, 4, 7, null, null, "drawing S-1"],
      ["NW-5", null, null, null, null, "1 in", "F1", null],
    ];
    const { commands, sheets } = open(KNOWN(), own);
    await commands.checkSelection();
    await commands.addMixes(FROM);
    const now = sheets.get(NAME)!;
    expect(now[1]).toEqual(own[1]);
    // ACI 318-19 Table 19.3.3.1, F1, 1 in: 4.5 %.
    expect(now[2]).toEqual([
      "NW-5",
      4.5,
      1.5,
      null,
      null,
      "1 in",
      "F1",
      expect.stringMatching(/^ACI 318-19/),
    ]);
  });

  test("that have limits in the setup are compared with them, the others with what is typed in the pane", async () => {
    const own: CellValue[][] = [
      ["Mix", "Low", "High"],
      ["NW-5", 5.5, 7],
    ];
    const { store, commands, air } = open(KNOWN(), own);
    store.set({ low: "4", high: "7" });
    await commands.checkSelection();
    expect(air(store)!.map(([, , specification]) => specification)).toEqual([
      "within",
      "above",
      "below",
    ]);
  });

  test("of a size that the table does not have are added without air, and that is said", async () => {
    const { store, commands } = open(KNOWN());
    await commands.checkSelection();
    await commands.addMixes({ ...FROM, size: "5 in" });
    expect(store.get().status).toMatch(/Mix “LW-4” got no specified air\. .*5 in/);
  });

  test("of a code that asks for a least air get a low limit (from memory, EN 206: at least 4 %)", async () => {
    const { commands, sheets } = open(KNOWN());
    await commands.checkSelection();
    await commands.addMixes({ table: "EN 206", exposure: "XF2", size: "" });
    expect(readSetup(sheets.get(NAME)!).specificationFor("NW-5")).toMatchObject({
      air: { low: 4 },
    });
  });

  test("1,000 of them are added at once", async () => {
    const tests = Array.from({ length: 1000 }, (_, i) => [`S-${i}`, `LW ${i}`, 6, 6, 16]);
    const { store, commands, sheets } = open([KNOWN()[0]!, ...tests]);
    await commands.checkSelection();
    await commands.addMixes(FROM);
    expect(store.get().error).toBe("");
    expect(sheets.get(NAME)).toHaveLength(1002);
    const verdicts = store.get().checked!.result.results.map(({ specification }) => specification);
    expect(new Set(verdicts)).toEqual(new Set(["within"]));
  });
});

test("cells that are given the setup sheet say what the pane says", async () => {
  const { store, commands, sheets } = open();
  for (const choice of DIALS) await commands.choose(choice);
  await commands.checkSelection();
  await commands.addMixes({ table: "ACI 318-19", exposure: "F3", size: "1 in" });
  await commands.keepSetup();
  sheets.get(NAME)![2]![5] = 10;
  await commands.checkSelection();
  const pane = checkedRows(store.get().checked!.result);
  const [headers, ...rows] = DAY();
  const cells = checkInCells([headers!], rows, undefined, undefined, sheets.get(NAME) as any[][]);
  expect(cells).toEqual(pane);
  expect(cells.map(([test, air]) => [test, air])).toEqual([
    ["valid", 6],
    ["valid", 8],
    ["valid", 5],
  ]);
});
