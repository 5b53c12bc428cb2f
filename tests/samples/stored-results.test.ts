import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { libreOffice, savedByLibreOffice } from "../../scripts/libreoffice";
import { dayOfTestsSheets } from "../../scripts/samples/day-of-tests-sheets";
import { addressOf } from "../../scripts/samples/sheet";
import { readWorkbook, type FileWorkbook } from "../../src/files/workbook/read-workbook";

// What is expected of the files: ECMA-376 Part 1, 18.2.2 (calcPr), 18.3.1.4 (c), 18.18.11 (t).

describe.each(["day-of-tests.xlsx", "verification.xlsx"])("%s", (name) => {
  const parts = unzipSync(readFileSync(`samples/${name}`));
  const sheets = Object.keys(parts).filter((part) => part.startsWith("xl/worksheets/sheet"));
  const text = (part: string) => strFromU8(parts[part]!);

  test("does not ask to be calculated on opening, by itself or by an old engine", () => {
    const [properties] = text("xl/workbook.xml").match(/<calcPr[^>]*>/)!;
    expect(properties).not.toContain("fullCalcOnLoad");
    // The engine of Excel 2019 and later, as files saved by it show (from memory).
    expect(Number(/calcId="(\d+)"/.exec(properties)![1])).toBeGreaterThanOrEqual(191029);
  });

  test("holds a result for every formula, errors as errors", () => {
    const cells = sheets.flatMap(
      (part) => text(part).match(/<c [^>]*>(?:(?!<\/c>).)*<\/c>/g) ?? [],
    );
    const formulas = cells.filter((cell) => cell.includes("<f"));
    expect(formulas.length).toBeGreaterThan(50);
    expect(formulas.filter((cell) => !/<v>|<v\/>/.test(cell))).toEqual([]);
    const shown = formulas.filter((cell) => /<v>#/.test(cell));
    expect(shown.filter((cell) => !/^<c [^>]*t="e"/.test(cell))).toEqual([]);
  });
});

test("what the day of tests cannot compute is stored as the error that the functions give", () => {
  const loads = strFromU8(
    unzipSync(readFileSync("samples/day-of-tests.xlsx"))["xl/worksheets/sheet1.xml"]!,
  );
  const errorIn = (cell: string) =>
    new RegExp(`<c r="${cell}"[^>]*t="e"[^>]*>.*?<v>([^<]*)</v>`).exec(loads)?.[1];
  // Row 18 has a text for a first reading; row 22 has readings of 5.0, 5.5 and 6.0, so no final one.
  expect([errorIn("U18"), errorIn("U22")]).toEqual(["#VALUE!", "#N/A"]);
});

jest.setTimeout(60_000);

const program = libreOffice();
const where = program ? "" : " (skipped: LibreOffice is not installed here)";

(program ? test : test.skip)(
  `LibreOffice opens the day of tests with every cell as it is${where}`,
  async () => {
    const folder = mkdtempSync(join(tmpdir(), "samples-"));
    const saved = savedByLibreOffice(program!, "samples/day-of-tests.xlsx", folder, false);
    rmSync(folder, { recursive: true });
    const [opened, ours] = await Promise.all([
      readWorkbook(saved),
      readWorkbook(readFileSync("samples/day-of-tests.xlsx")),
    ]);
    expect(opened.sheets.map(({ name }) => name)).toEqual(ours.sheets.map(({ name }) => name));
    const value = ({ sheets }: FileWorkbook, s: number, r: number, c: number) => {
      const found = sheets[s]!.rows[r]?.[c] ?? "";
      return found instanceof Date ? Math.round(found.getTime() / 1000) : found;
    };
    // LibreOffice calculates array formulas anew, whatever stands in the file; it does not know ours.
    const typed = dayOfTestsSheets()
      .flatMap(({ rows }, s) =>
        rows.flatMap((row, r) =>
          row.flatMap((cell, c) =>
            s === 0 && c > 18 ? [] : cell && !cell.f ? [[s, r, c] as const] : [],
          ),
        ),
      )
      .filter(([s, r]) => s !== 1 || r < 2);
    expect(typed.length).toBeGreaterThan(500);
    const changed = typed.filter(([s, r, c]) => value(opened, s, r, c) !== value(ours, s, r, c));
    expect(changed.map(([s, r, c]) => `${ours.sheets[s]!.name}!${addressOf(r, c)}`)).toEqual([]);
  },
);
