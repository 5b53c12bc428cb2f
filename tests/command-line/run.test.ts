import { readFileSync } from "node:fs";
import { checkStream } from "../../src/command-line/check-stream";
import { run } from "../../src/command-line/run";
import type { Said, SaidFinding, SaidSheet, SaidTest } from "../../src/command-line/said";
import { saveWorkbook } from "../../src/files/workbook/save-workbook";
import { check, findings } from "../../src/functions/field-sheet";
import { compoundOf } from "../files/bad-files";

const SAMPLE = readFileSync("samples/day-of-tests.csv");
const HEADER = "Sample,First reading,Second reading,Alcohol (oz),Foam (%),Low,High";
/** Foam of 3 is more than the 2 divisions that the method allows (memory: C173). */
const FOAMING = `${HEADER}\nS-1,5.5,5.5,16,3,4.5,7.5\n`;
const GOOD = `${HEADER}\nS-1,6,6,16,1,4.5,7.5\n`;

/** Runs a command line on files that are only named, and on what comes in in pieces. */
async function runOn(
  words: string,
  files: Readonly<Record<string, string | Uint8Array>> = {},
  input: string | Uint8Array = "",
  piece = 7,
  locale?: string,
) {
  const lines: string[] = [];
  const told: string[] = [];
  const code = await run(words.split(" "), {
    locale,
    file: (name) => {
      const file = files[name];
      if (file === undefined) throw new Error("no such file");
      const bytes = Buffer.from(file as string);
      return { size: bytes.length, whole: () => bytes, pieces: () => piecesOf(bytes, 65_536) };
    },
    input: () => piecesOf(input, piece),
    write: async (line) => {
      lines.push(line);
    },
    tell: (line) => told.push(line),
  });
  const said = words.includes("--json") ? lines.map((line) => JSON.parse(line) as Said) : [];
  return {
    ...{ code, lines, told, said },
    findings: said.filter((each): each is SaidFinding => each.kind === "finding"),
    tests: said.filter((each): each is SaidTest => each.kind === "test"),
    sheets: said.filter((each): each is SaidSheet => each.kind === "sheet"),
    notRead: said.flatMap((each) => (each.kind === "not read" ? [each.message] : [])),
  };
}

async function* piecesOf(input: string | Uint8Array, length: number) {
  const bytes = Buffer.from(input as string);
  for (let from = 0; from < bytes.length; from += length) yield bytes.subarray(from, from + length);
}

/** The sample as cells of a worksheet. */
function sampleCells(): (string | number)[][] {
  return SAMPLE.toString("utf8")
    .replace(/^\uFEFF/, "")
    .trimEnd()
    .split(/\r?\n/)
    .map((line) =>
      line.split(",").map((cell) => (/^-?\d+(\.\d+)?$/.test(cell) ? Number(cell) : cell)),
    );
}

test("says of each test of the sample what FRESH.CHECK says", async () => {
  const [headers, ...rows] = sampleCells();
  const cells = check([headers!], rows) as (string | number)[][];
  const { tests } = await runOn("--json --tests day.csv", { "day.csv": SAMPLE });
  const expected = cells.flatMap(([test, air, specification], i) =>
    test === "" ? [] : [[i + 2, test, air, specification]],
  );
  expect(
    tests.map(({ row, test, air = "", specification = "" }) => [row, test, air, specification]),
  ).toEqual(expected);
});

test.each([
  ["a file", "day.csv"],
  ["a stream", "-"],
])("finds in %s what FRESH.FINDINGS finds", async (_, name) => {
  const [headers, ...rows] = sampleCells();
  const [, ...lines] = findings([headers!], rows) as (string | number)[][];
  // Behind the findings stands what was not looked at, which is no finding.
  const listed = lines.filter(([, , rule]) => rule !== "not-looked-at");
  const said = await runOn(`--json ${name}`, { "day.csv": SAMPLE }, SAMPLE);
  expect(said.code).toBe(1);
  // A finding of the sheet names no row; an earlier test is named by the row of the file.
  const inFile = (message: unknown) =>
    String(message).replace(/\brow (\d+)\b/g, (_, row) => `row ${Number(row) + 1}`);
  expect(
    said.findings.map(({ row, sample, rule, weight, column, value, message }) => [
      row ?? "sheet",
      ...[sample, rule, weight, column, value, message],
    ]),
  ).toEqual(
    listed.map(([row, sample, rule, weight, column, value, message]) => [
      typeof row === "number" ? row + 1 : row,
      ...[sample, rule, weight, column, value, inFile(message)],
    ]),
  );
});

test("a stream of many batches says what the same file says in one", async () => {
  const row = (i: number) => {
    // Every 101st test is entered twice, every 89th foams too much, some are outside.
    const test = i % 101 === 1 ? i - 1 : i;
    const reading = 5.5 + (test % 9) / 4;
    return `S-${test},${reading},${reading},16,${test % 89 === 0 ? 3 : 1},4.5,7.5`;
  };
  const rows = Array.from({ length: 3000 }, (_, i) => row(i));
  const csv = `${HEADER}\n${rows.join("\n")}\n`;
  const file = await runOn("--json day.csv", { "day.csv": csv });
  const said: Said[] = [];
  const size = { rows: 700, neighbours: 50 };
  for await (const each of checkStream("-", piecesOf(csv, 4096), {}, false, size)) said.push(each);
  const plain = ({ row, rule, message }: SaidFinding) => [row, rule, message];
  const streamed = said.filter((each): each is SaidFinding => each.kind === "finding");
  expect(file.findings.length).toBeGreaterThan(300);
  expect(streamed.map(plain)).toEqual(file.findings.map(plain));
  const { area, ...sheet } = file.sheets[0]!;
  expect(area).toBe("A1:G3001");
  expect(said.at(-1)).toEqual({ ...sheet, file: "-" });
});

test.each([
  [
    "a row for each reading",
    "Sample,Roll,Reading (%),Alcohol (pt)",
    (i: number) => `S-${i},1,5.5,2\nS-${i},2,5.5,2\nS-${i},3,5.75,2`,
  ],
  [
    "a title of another method",
    "Air by pressure meter,,,\nSample,First reading,Second reading,Alcohol (pt)",
    (i: number) => `S-${i},5.5,5.5,2`,
  ],
])("a stream in batches counts the tests that the file has: %s", async (_, header, test) => {
  const csv = `${header}\n${Array.from({ length: 900 }, (_, i) => test(i)).join("\n")}\n`;
  const file = await runOn("--json day.csv", { "day.csv": csv });
  const said: Said[] = [];
  const size = { rows: 250, neighbours: 20 };
  for await (const each of checkStream("-", piecesOf(csv, 4096), {}, false, size)) said.push(each);
  const { area, ...sheet } = file.sheets[0]!;
  expect(area).toMatch(/^A\d:D\d+$/);
  expect(said.at(-1)).toEqual({ ...sheet, file: "-" });
  expect(sheet.tests).toBe(900);
});

test("a stream says all that the file says of what stands above the header and of columns, at its line", async () => {
  const head = "Max air,7.5,,,,\nSpec slump,3 - 5,,,,\nMix,LW,,,,\n,,,,,\n";
  const header = "Sample,First reading,Second reading,Alcohol (pt),Looked,Kept";
  const test = (i: number) => `S-${i},5.5,5.5,2,${i % 2 ? "Y" : "N"},${i % 3 ? "Y" : "N"}`;
  const csv = `${head}${header}\n${Array.from({ length: 900 }, (_, i) => test(i)).join("\n")}\n`;
  const { findings } = await runOn("--json day.csv", { "day.csv": csv });
  const size = { rows: 250, neighbours: 20 };
  const said: Said[] = [];
  for await (const each of checkStream("-", piecesOf(csv, 4096), {}, false, size)) said.push(each);
  const plain = ({ row, rule, message }: SaidFinding) => [row, rule, message];
  const streamed = said.filter((each): each is SaidFinding => each.kind === "finding");
  expect(findings.length).toBeGreaterThan(3);
  expect(streamed.map(plain)).toEqual(findings.map(plain));
});

test("a stream of a row for each value is not read as one of tests", async () => {
  const rows = Array.from(
    { length: 400 },
    (_, i) => `S-${i},First reading,5.5\nS-${i},Alcohol (pt),2`,
  );
  const csv = ["Sample,Parameter,Value", ...rows].join("\n");
  const said: Said[] = [];
  for await (const each of checkStream("-", piecesOf(csv, 4096), {}, false)) said.push(each);
  expect(said).toEqual([
    expect.objectContaining({
      kind: "not read",
      message: expect.stringMatching(
        /^The table holds several tests in a row, or a row for each value/,
      ),
    }),
  ]);
});

test("a stream says where its later lines are read otherwise than those above", async () => {
  const rows = (from: number, date: (day: number) => string, foam: (i: number) => string) =>
    Array.from(
      { length: 700 },
      (_, i) => `S-${from + i},${date(1 + (i % 28))},5.5,5.5,16,${foam(i)}`,
    );
  const csv = [
    "Sample,Date,Reading 1,Reading 2,Alcohol (oz),Foam",
    ...rows(
      0,
      (day) => `${day}/5/2026`,
      () => "1",
    ),
    ...rows(
      700,
      (day) => `5/${day}/2026`,
      () => "1",
    ),
  ].join("\n");
  const said: Said[] = [];
  const size = { rows: 500, neighbours: 50 };
  for await (const each of checkStream("-", piecesOf(csv, 4096), {}, false, size)) said.push(each);
  expect(said.filter(({ kind }) => kind === "not read")).toEqual([
    {
      ...{ kind: "not read", file: "-", row: 1002, amiss: true },
      message:
        "From line 1002 on “Date” was read as date, the month first, above it as date, the day first. Say in a setup which it is, or give the file by its name, so that it is read whole.",
    },
  ]);
});

test.each([
  ["a table below titles", `Deck log,,,,,,\n,,,,,,\n${GOOD}`],
  ["a form", "Sample,S-1\nFirst reading,5.5\nSecond reading,5.5\nAlcohol (oz),16\nFoam,3\n"],
])("what is short says on standard input what it says as a file: %s", async (_, csv) => {
  const file = await runOn("--json day.csv", { "day.csv": csv });
  const stream = await runOn("--json -", {}, csv);
  const plain = ({ row, rule, message }: SaidFinding) => [row, rule, message];
  expect(stream.findings.map(plain)).toEqual(file.findings.map(plain));
  expect(stream.sheets.map(({ tests }) => tests)).toEqual(file.sheets.map(({ tests }) => tests));
  expect(file.sheets[0]!.tests).toBeGreaterThan(0);
});

test.each([
  ["nothing found", "good.csv", 0],
  ["something found", "foam.csv", 1],
  ["a file that is not there", "none.csv", 2],
  ["one good and one that is not there", "good.csv none.csv", 2],
  ["no file named", "--json", 2],
  ["an unknown option", "--jsn good.csv", 2],
  ["a limit that is no number", "--low much good.csv", 2],
])("ends with the code for %s", async (_, words, code) => {
  expect((await runOn(words, { "good.csv": GOOD, "foam.csv": FOAMING })).code).toBe(code);
});

test("one bad file never hides the others, and neither does a sheet without tests", async () => {
  const files = {
    "old.xls": compoundOf("Workbook"),
    "book.xlsx": readFileSync("tests/workbench/files/by-libreoffice.xlsx"),
    "foam.csv": FOAMING,
  };
  const { code, said, findings, notRead } = await runOn("--json old.xls book.xlsx foam.csv", files);
  expect(code).toBe(2);
  expect(notRead[0]).toBe(
    "“old.xls” is a workbook of the older .xls kind. Open it in a spreadsheet and save it as .xlsx.",
  );
  expect(findings).toContainEqual(
    expect.objectContaining({
      file: "book.xlsx",
      sheet: "Loads & tests",
      cell: "G5",
      weight: "void",
      value: 3.5,
    }),
  );
  expect(findings).toContainEqual(
    expect.objectContaining({ file: "foam.csv", row: 2, rule: "foam-over-limit", value: 3 }),
  );
  // Sheets of mixes and lists hold no tests, and nothing is amiss with that.
  expect(
    said.filter((each) => each.kind === "not read" && !each.amiss).map(({ sheet }) => sheet),
  ).toEqual(["Mixes", "Lists"]);
});

test("a workbook of sheets without tests alone is said not to be read", async () => {
  const { code, notRead } = await runOn("--json mixes.csv", {
    "mixes.csv": "Mix,Target\nLW-1,6\n",
  });
  expect(code).toBe(2);
  expect(notRead[1]).toMatch(/^“mixes.csv” holds no table of volumetric air tests/);
});

test.each([
  ["objects", '{"Sample":"S-1","First reading":5.5,"Foam (%)":3,"Alcohol (oz)":16}\n'],
  ["lists", '["Sample","First reading","Foam (%)","Alcohol (oz)"]\n["S-1",5.5,3,16]\n'],
])("JSON lines of %s are read", async (_, input) => {
  const { code, findings, notRead } = await runOn("--json -", {}, input);
  expect([code, notRead]).toEqual([1, []]);
  expect(findings).toContainEqual(
    expect.objectContaining({ sample: "S-1", rule: "foam-over-limit", value: 3 }),
  );
});

test("a line that is no JSON and a name that comes late are said, and the others are read", async () => {
  const object = (sample: string, more = "") =>
    `{"Sample":"${sample}","First reading":5.5,"Second reading":5.5,"Foam (%)":3,"Alcohol (oz)":16${more}}`;
  const input = [
    object("S-1"),
    "{oh no",
    object("S-2", ',"Leak":"yes"'),
    object("S-3", ',"Leak":1'),
  ];
  const { code, findings, notRead } = await runOn("--json -", {}, input.join("\n"));
  expect(code).toBe(2);
  expect(notRead).toEqual([
    "Line 2 is neither a JSON object nor a list of cells, so it was left out.",
    "Line 3 has “Leak”, which the first line does not have, so it was left out here and below. Name it in the first line.",
  ]);
  const foaming = findings.filter(({ rule }) => rule === "foam-over-limit");
  expect(foaming.map(({ row, sample }) => [row, sample])).toEqual([
    [1, "S-1"],
    [3, "S-2"],
    [4, "S-3"],
  ]);
});

test("cells beyond the last column are said, blank ones are not", async () => {
  const rows = Array.from({ length: 300 }, (_, i) => `S-${i},6,6,16,1,4.5,7.5`);
  rows[250] += ",leak";
  rows[260] += ",";
  const { code, notRead } = await runOn("--json -", {}, [HEADER, ...rows].join("\n"), 4096);
  expect([code, notRead]).toEqual([
    2,
    ["Line 252 has more cells than there are headers, so the last ones were left out."],
  ]);
});

test.each([
  ["UTF-16 of Windows", Buffer.from(`\uFEFF${FOAMING}`, "utf16le")],
  ["UTF-8 with a mark", Buffer.from(`\uFEFF${FOAMING}`)],
  ["semicolons and decimal commas", FOAMING.replace(/,/g, ";").replace(/\./g, ",")],
])("a stream in %s is read", async (_, input) => {
  const { findings } = await runOn("--json -", {}, input, 3);
  expect(findings).toContainEqual(expect.objectContaining({ rule: "foam-over-limit" }));
});

test("a large CSV file is streamed like standard input", async () => {
  const rows = Array.from({ length: 1000 }, (_, i) => `S-${i},6,6,16,${i === 998 ? 3 : 1},4.5,7.5`);
  // Blanks behind the cells make 1,000 rows a file of more than 64 MB.
  const csv = [HEADER, ...rows.map((row) => row + " ".repeat(68_000))].join("\n");
  const { findings, sheets } = await runOn("--json large.csv", { "large.csv": csv });
  expect(findings).toContainEqual(expect.objectContaining({ row: 1000, rule: "foam-over-limit" }));
  expect(sheets).toEqual([expect.not.objectContaining({ area: expect.anything() })]);
});

test("a line without an end is said and ends the stream", async () => {
  const { code, notRead } = await runOn("--json -", {}, `a,"${"x".repeat(1_100_000)}`, 65_536);
  expect(code).toBe(2);
  expect(notRead[0]).toMatch(/^“-” has \d+ characters in line 1 without an end/);
});

test("limits that are given are used where the sheet has none", async () => {
  const csv = "Sample,First reading,Second reading,Alcohol (oz)\nS-1,8,8,16\n";
  const { tests } = await runOn("--json --tests --low 4.5 --high 7.5 day.csv", { "day.csv": csv });
  expect(tests[0]).toMatchObject({ test: "valid", air: 8, specification: "above" });
});

test("lines for people say file, place, weight and what to do, and who decides", async () => {
  const { lines, told } = await runOn("foam.csv", { "foam.csv": FOAMING });
  expect(lines[0]).toMatch(/^foam\.csv: E2: void: S-1: Foam \(%\): 3 divisions of foam/);
  expect(told).toEqual([expect.stringMatching(/never replace, the project specification/)]);
});

test("a workbook is read with the setup on its own sheet, which is no sheet of tests", async () => {
  const { bytes } = await saveWorkbook(
    undefined,
    [
      sheetOf("Day", [
        ["Sample", "Dial X", "Dial Y", "Spirit"],
        ["S-1", 6, 6.25, 48],
      ]),
      sheetOf("Fresh setup", [
        ["Header", "Taken for", "Unit"],
        ["Dial X", "first reading", null],
        ["Dial Y", "second reading", null],
        ["Spirit", "alcohol", "oz"],
      ]),
    ],
    [],
    () => false,
  );
  // Derived: 6.25 − 0.30 = 5.95 → 6.00.
  const { tests, notRead } = await runOn("--json --tests day.xlsx", { "day.xlsx": bytes });
  expect(tests.map(({ air }) => air)).toEqual([6]);
  expect(notRead.join()).not.toContain("Fresh setup");
});

function sheetOf(name: string, rows: readonly (readonly (string | number | null)[])[]) {
  return { name, rows, heading: false, widths: [] };
}

describe("--setup", () => {
  const DAY = "Sample,Mix,Dial one,Dial two,Spirit\nA-1,LW-4,6,6.25,48\nA-2,LW-4,8,8,80\n";
  const SETUP =
    "Header,Taken for,Unit\nDial one,first reading,\nDial two,second reading,\nSpirit,alcohol,oz\n\nMix,Target,Tolerance\nLW-4,6,0.5\n";
  const both = (setup: string) => ({ "day.csv": DAY, "setup.csv": setup });

  test.each(["day.csv", "-"])(
    "says in %s what columns hold (derived: 6.25 − 0.30 → 6.00, 8.00 − 0.90 → 7.00)",
    async (name) => {
      const { tests } = await runOn(`--json --tests --setup setup.csv ${name}`, both(SETUP), DAY);
      expect(tests.map(({ air, specification }) => [air, specification])).toEqual([
        [6, "within"],
        [7, "above"],
      ]);
    },
  );

  test("lines that cannot be used are said once each, in a stream too", async () => {
    const wrong = SETUP.replace("alcohol,oz", "alcohol,°F").replace("LW-4,6,0.5", "LW-4,6,");
    for (const name of ["day.csv", "-"]) {
      const run = await runOn(`--json --setup setup.csv ${name}`, both(wrong), DAY);
      const said = run.findings.filter(({ rule }) => rule === "setup-not-applied");
      expect(said.map(({ message }) => message)).toEqual([
        expect.stringMatching(/line 4: alcohol is not given in °F/),
        expect.stringMatching(/line 7, Target: 6 alone is no limit/),
      ]);
    }
  });

  test.each([
    ["--setup none.csv day.csv", /“none.csv” is not there/],
    ["day.csv --setup", /--setup needs the name of a file/],
    ["--setup empty.csv day.csv", /empty/],
  ])("%s checks nothing and says why", async (words, sentence) => {
    const { code, lines, told } = await runOn(words, { ...both(SETUP), "empty.csv": "" });
    expect([code, lines, told]).toEqual([2, [], [expect.stringMatching(sentence)]]);
  });

  test("a quote that is never closed in it is said", async () => {
    const run = await runOn("--json --setup setup.csv day.csv", both(`${SETUP}"LW-5,6,1\n`));
    expect(run.code).toBe(2);
    expect(run.said[0]).toMatchObject({ kind: "not read", file: "setup.csv", amiss: true });
  });
});

test.each([
  ["--language es foam.csv", "en_US.UTF-8", "3 divisiones de espuma son más"],
  ["foam.csv", "es_MX.UTF-8", "3 divisiones de espuma son más"],
  ["--language en foam.csv", "es_MX.UTF-8", "3 divisions of foam are more"],
  ["foam.csv", "de_DE.UTF-8", "3 divisions of foam are more"],
  ["foam.csv", undefined, "3 divisions of foam are more"],
])("%s on a machine in %s speaks as asked", async (words, locale, said) => {
  const { lines } = await runOn(words, { "foam.csv": FOAMING }, "", 7, locale);
  expect(lines[0]).toContain(said);
  // What the tests and findings are called is the same in every language.
  expect(lines[0]).toContain("void");
});

test("--language takes what is spoken", async () => {
  const { code, told } = await runOn("--language fr foam.csv", { "foam.csv": FOAMING });
  expect(code).toBe(2);
  expect(told).toEqual(["--language needs en or es, and “fr” is neither."]);
});
