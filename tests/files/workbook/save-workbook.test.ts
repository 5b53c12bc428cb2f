import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { OpenedPackage } from "../../../src/files/package/opened-package";
import { blocksOf } from "../../../src/files/workbook/cell-reference";
import type { MarkRule } from "../../../src/files/workbook/mark-rules";
import { readWorkbook } from "../../../src/files/workbook/read-workbook";
import { saveWorkbook, type SheetChanges } from "../../../src/files/workbook/save-workbook";

/** Written by openpyxl 3.0.9 and by LibreOffice 7.4 (scripts/make-workbook-fixtures.py). */
const WRITERS = ["by-openpyxl", "by-libreoffice"] as const;
const SHEET = "Loads & tests";

const fixture = (name: string) =>
  new Uint8Array(readFileSync(`tests/workbench/files/${name}.xlsx`));
const isOurs = (formula: string) => /"fresh-mark-(void|error|doubt|note)"/.test(formula);
const rule = (weight: string, cells: string): MarkRule => ({
  formula: `LEN("fresh-mark-${weight}")>0`,
  blocks: blocksOf(cells),
  fill: weight === "void" ? "#5b2a4e" : "#e59a78",
  ink: "#ffffff",
});
const changes = (change: Partial<SheetChanges>): SheetChanges => ({
  sheet: SHEET,
  rules: [],
  notes: new Map(),
  cells: [],
  ...change,
});
const MARKED = changes({
  rules: [rule("void", "G5"), rule("error", "H5:H6 A3")],
  notes: new Map([
    ["G5", "Checked with FRESH (11)\nToo & <much>"],
    ["A9", "Second"],
  ]),
});
const NOTHING = changes({});
const RESULTS = {
  name: "FRESH results",
  heading: true,
  widths: [10, 40],
  rows: [
    ["row", "message"],
    [3, "Too much foam"],
  ],
};

/** The parts of a package as text, except those that were left as they are in another one. */
async function partsOf(bytes: Uint8Array): Promise<Map<string, string>> {
  const opened = new OpenedPackage(bytes);
  const parts = new Map<string, string>();
  for (const name of opened.names())
    parts.set(name, Buffer.from(await opened.content(name)).toString("latin1"));
  return parts;
}

async function changedParts(before: Uint8Array, after: Uint8Array) {
  const [was, is] = [await partsOf(before), await partsOf(after)];
  return {
    gone: [...was.keys()].filter((name) => !is.has(name)),
    added: [...is.keys()].filter((name) => !was.has(name)),
    changed: [...was.keys()].filter((name) => is.has(name) && is.get(name) !== was.get(name)),
  };
}

describe.each(WRITERS)("a workbook written %s", (writer) => {
  const original = fixture(writer);
  const isOpenpyxl = writer === "by-openpyxl";

  test("without a change is saved byte for byte", async () => {
    const { bytes } = await saveWorkbook(original, [], [NOTHING], isOurs);
    expect(await changedParts(original, bytes)).toEqual({ gone: [], added: [], changed: [] });
  });

  test("with marks and notes changes the sheet, the styles and the notes, and no other part", async () => {
    const { bytes } = await saveWorkbook(original, [], [MARKED], isOurs);
    const { gone, added, changed } = await changedParts(original, bytes);
    expect([gone, added]).toEqual([[], []]);
    expect(changed.sort()).toEqual(
      [
        "xl/worksheets/sheet1.xml",
        "xl/styles.xml",
        isOpenpyxl ? "xl/comments/comment1.xml" : "xl/comments1.xml",
        isOpenpyxl ? "xl/drawings/commentsDrawing1.vml" : "xl/drawings/vmlDrawing1.vml",
      ].sort(),
    );
  });

  test("keeps every character of the parts that are changed, with ours put in", async () => {
    const { bytes } = await saveWorkbook(original, [], [MARKED], isOurs);
    const [was, is] = [await partsOf(original), await partsOf(bytes)];
    for (const part of [
      "xl/worksheets/sheet1.xml",
      isOpenpyxl ? "xl/comments/comment1.xml" : "xl/comments1.xml",
    ])
      expect(isSubsequence(was.get(part)!, is.get(part)!)).toBe(true);
    const plain = (styles: string) => styles.replace(/<dxfs count="\d+">/, "<dxfs>");
    expect(isSubsequence(plain(was.get("xl/styles.xml")!), plain(is.get("xl/styles.xml")!))).toBe(
      true,
    );
  });

  test("takes marks and notes off again so that nothing of them is left in the sheet", async () => {
    const { bytes: marked } = await saveWorkbook(original, [], [MARKED], isOurs);
    const off = changes({
      notes: new Map([
        ["G5", null],
        ["A9", null],
      ]),
    });
    const { bytes } = await saveWorkbook(marked, [], [off], isOurs);
    const [was, is] = [await partsOf(original), await partsOf(bytes)];
    expect(is.get("xl/worksheets/sheet1.xml")).toBe(was.get("xl/worksheets/sheet1.xml"));
    expect([...is.keys()]).toEqual([...was.keys()]);
  });

  test("saved twice is the same as saved once", async () => {
    const { bytes: once } = await saveWorkbook(original, [], [MARKED], isOurs);
    const { bytes: twice } = await saveWorkbook(once, [], [MARKED], isOurs);
    expect(Buffer.compare(Buffer.from(once), Buffer.from(twice))).toBe(0);
  });

  test("gets a first note on a sheet that has none, and loses it without a trace", async () => {
    const on = { ...NOTHING, sheet: "Mixes", notes: new Map([["B2", "Ask"]]) };
    const { bytes: noted } = await saveWorkbook(original, [], [on], isOurs);
    expect((await sheetNamed(noted, "Mixes")).cells!.get("1,1")!.comment!.text).toBe("Ask");
    const off = { ...on, notes: new Map([["B2", null]]) };
    const { bytes } = await saveWorkbook(noted, [], [off], isOurs);
    expect(await changedParts(original, bytes)).toMatchObject({ gone: [], added: [] });
    const [was, is] = [await partsOf(original), await partsOf(bytes)];
    expect(is.get("xl/worksheets/sheet2.xml")).toBe(was.get("xl/worksheets/sheet2.xml"));
  });

  test("gets a results sheet behind the others", async () => {
    const { bytes } = await saveWorkbook(original, [RESULTS], [NOTHING], isOurs);
    const { gone, added, changed } = await changedParts(original, bytes);
    expect([gone, added]).toEqual([[], ["xl/worksheets/sheet4.xml"]]);
    expect(changed.sort()).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/styles.xml",
      "xl/workbook.xml",
    ]);
    const { rows } = await sheetNamed(bytes, "FRESH results");
    expect(rows).toEqual([
      ["row", "message"],
      [3, "Too much foam"],
    ]);
  });

  test("keeps formats, formulas and other cells around a changed one", async () => {
    const cells = [
      { row: 4, column: 2, content: 6.5 },
      { row: 4, column: 10, content: "read again" },
      { row: 7, column: 0, content: "S-5" },
      { row: 3, column: 6, content: null },
    ];
    const { bytes, left } = await saveWorkbook(original, [], [changes({ cells })], isOurs);
    expect(left).toEqual([]);
    const before = (await sheetNamed(original, SHEET)).rows;
    const { rows, cells: styled } = await sheetNamed(bytes, SHEET);
    expect(rows[4]![2]).toBe(6.5);
    expect(rows[4]![10]).toBe("read again");
    expect(rows[7]![0]).toBe("S-5");
    expect(rows[3]![6] ?? null).toBeNull();
    expect(styled!.get("4,2")!.style!.numFmt).toBe("0.00");
    expect(rows[5]).toEqual(before[5]);
    expect(styled!.get("2,11")!.formula).toBe("H3-I3");
    expect((await partsOf(bytes)).get("xl/workbook.xml")).toMatch(
      /<calcPr[^>]* fullCalcOnLoad="1"/,
    );
  });
});

test("cells that came from no workbook are saved as a workbook of their own", async () => {
  const marks = { ...MARKED, sheet: RESULTS.name };
  const { bytes } = await saveWorkbook(undefined, [RESULTS], [marks], isOurs);
  const sheet = await sheetNamed(bytes, RESULTS.name);
  expect(sheet.rows[1]).toEqual([3, "Too much foam"]);
  expect(sheet.cells!.get("4,6")!.comment!.text).toContain("Too & <much>");
  expect(sheet.conditionalRules).toHaveLength(2);
});

const PYTHON = "/usr/bin/python3";
const withOpenpyxl = hasOpenpyxl() ? test : test.skip;
if (!hasOpenpyxl())
  console.warn(
    "openpyxl is not installed (Debian: python3-openpyxl): not tried whether it opens what is saved",
  );

withOpenpyxl.each(WRITERS)("openpyxl opens what is saved from a workbook %s", async (writer) => {
  const { bytes } = await saveWorkbook(fixture(writer), [RESULTS], [MARKED], isOurs);
  const path = join(mkdtempSync(join(tmpdir(), "saved-")), "saved.xlsx");
  writeFileSync(path, bytes);
  const script = `
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
sheet = book["Loads & tests"]
rules = sorted((str(group.sqref), rule.formula[0]) for group in sheet.conditional_formatting for rule in group.rules if rule.type == "expression")
fill = [rule.dxf.fill.bgColor.rgb for group in sheet.conditional_formatting for rule in group.rules if "fresh-mark-void" in str(rule.formula)]
notes = {cell.coordinate: cell.comment.text for row in sheet.iter_rows() for cell in row if cell.comment}
print(json.dumps([book.sheetnames, rules, fill, notes, [[c.value for c in r] for r in book["FRESH results"]], len(sheet._charts)]))`;
  const said = JSON.parse(execFileSync(PYTHON, ["-c", script, path], { encoding: "utf8" }));
  expect(said).toEqual([
    [SHEET, "Mixes", "Lists", "FRESH results"],
    [
      ["A3 H5:H6", 'LEN("fresh-mark-error")>0'],
      ["G3:G6", "$G3>2"],
      ["G5", 'LEN("fresh-mark-void")>0'],
    ],
    ["FF5B2A4E"],
    {
      A3: "First truck\nof the day",
      H4: "Looked at again by R. Ferro",
      G5: "Checked with FRESH (11)\nToo & <much>",
      A9: "Second",
    },
    [
      ["row", "message"],
      [3, "Too much foam"],
    ],
    1,
  ]);
});

async function sheetNamed(bytes: Uint8Array, name: string) {
  const { sheets } = await readWorkbook(bytes);
  return sheets.find((sheet) => sheet.name === name)!;
}

/** Whether all characters of a text stand in another one in their order, so that it was only added to. */
function isSubsequence(short: string, long: string): boolean {
  let at = 0;
  for (const character of long) if (at < short.length && character === short[at]) at++;
  return at === short.length;
}

function hasOpenpyxl(): boolean {
  try {
    execFileSync(PYTHON, ["-c", "import openpyxl"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
