import { readdirSync } from "node:fs";
import { RULES } from "../../src/fieldsheet/rules";
import { Problem } from "../../src/measure/problem";
import { catalogue } from "../../src/messages/catalogue";
import { ruleMessages } from "../../src/messages/english/rules";
import { recogniseColumns } from "../../src/reading/columns";
import { FIELDS, type FieldId } from "../../src/reading/fields";
import { sentence } from "../../scripts/reference/markdown";
import type { SheetTable } from "../../src/reading/sheet-table";
import { saidBy, sheetFor, type Cells, type RuleCases } from "./rule-cases";

const FOLDER = "tests/fieldsheet/rules";
const tables = new Map<string, RuleCases>(
  readdirSync(FOLDER).map((name) => [
    name.slice(0, -3),
    require(`./rules/${name}`).cases as RuleCases,
  ]),
);
describe("every rule has what it must have", () => {
  test.each(RULES.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
    expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    for (const said of rule.says) expect(sentence(catalogue[said])).toMatch(/\.$/);
    // What it rests on ends with the source, and how far that is trusted.
    expect(rule.basis).toMatch(/^[A-Z].*\(.{10,}\)[^()]*\.$/s);
    expect([...tables.keys()]).toContain(id);
    for (const field of [...rule.needs, ...(rule.needsOneOf ?? [])])
      expect(FIELDS).toHaveProperty(field);
  });

  test("there are no tables of rules that are gone", () => {
    expect([...tables.keys()].filter((id) => !RULES.some((rule) => rule.id === id))).toEqual([]);
  });

  test("ids are unique", () => {
    const ids = RULES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test("each file of a rule is in the list of rules", () => {
    const files = readdirSync("src/fieldsheet/rules").map((name) => name.replace(/\.ts$/, ""));
    expect(files.filter((name) => name !== "index").sort()).toEqual(
      RULES.map(({ id }) => id).sort(),
    );
  });

  test("each sentence of a rule ends as a sentence does", () => {
    const unfinished = Object.values(ruleMessages).filter((said) => !/[.]$/.test(sentence(said)));
    expect(unfinished).toEqual([]);
  });
});

/** Rules that speak because something is not there, or where two of three are enough. */
const SPEAKS_OF_BLANKS: ReadonlySet<string> = new Set([
  "second-reading-missing",
  "alcohol-missing",
  "decided-all-the-same",
  "cylinders-apart",
]);

/** Rules that are about the method itself, so that another one is another case. */
const OF_THE_METHOD: ReadonlySet<string> = new Set([
  "wrong-method-for-aggregate",
  "other-method",
  "pressure-check-due",
  "pressure-check-may-be-due",
]);

/** What a sentence holds where a value was missing behind it. */
const NONSENSE = /\bNaN\b|\bundefined\b|\bnull\b|Infinity/;

describe.each([...tables])("%s", (id, { silent, speaks }) => {
  test("has cases of both kinds", () => {
    expect(silent.length).toBeGreaterThan(0);
    expect(speaks.length).toBeGreaterThan(0);
  });

  test.each(silent.map(([records, source]) => ({ records, source })))(
    "says nothing about $records ($source)",
    ({ records }) => {
      expect(saidBy(id, sheetFor(records))).toEqual([]);
    },
  );

  test.each(speaks.map(([records, said, source]) => ({ records, said, source })))(
    "speaks about $records ($source)",
    ({ records, said }) => {
      expect(saidBy(id, sheetFor(records))).toEqual(said);
    },
  );

  test("is silent when a column that it needs is not in the sheet", () => {
    const { needs, needsOneOf = [] } = RULES.find((rule) => rule.id === id)!;
    for (const [records] of speaks) {
      const sheet = sheetFor(records);
      for (const field of needs) expect(saidWithout(id, sheet, [field])).toEqual([]);
      if (needsOneOf.length > 0) expect(saidWithout(id, sheet, needsOneOf)).toEqual([]);
    }
  });

  const rule = RULES.find((each) => each.id === id)!;
  const ofOneTest = rule.kind !== "looks across the sheet" && !OF_THE_METHOD.has(id);
  if (ofOneTest) {
    test("looks at a test by the pressure method only where it says so", () => {
      for (const [records] of speaks) {
        const given = (Array.isArray(records) ? records : [records]) as readonly Cells[];
        const sheet = sheetFor(given.map((record) => ({ ...record, Method: "pressure" })));
        if ("anyMethod" in rule) expect(saidBy(id, sheet)).not.toEqual([]);
        else expect(saidBy(id, sheet)).toEqual([]);
      }
    });
  }

  const isMissed = SPEAKS_OF_BLANKS.has(id);
  test("says nothing of a blank that it needs, and nothing that makes no sense", () => {
    const { needs } = rule;
    for (const [records] of speaks) {
      const sheet = sheetFor(records);
      const columns = recogniseColumns(sheet.headers);
      for (const [column, header] of sheet.headers.entries()) {
        const field = needs.find((need) => columns[need]?.index === column);
        for (const at of sheet.rows.keys()) {
          const rows = sheet.rows.map((row, i) =>
            i === at ? row.map((cell, c) => (c === column ? null : cell)) : row,
          );
          const said = saidBy(id, { ...sheet, rows });
          for (const [, , text] of said) expect(text).not.toMatch(NONSENSE);
          if (field && !isMissed)
            expect([header, said.filter(([row]) => row === at + 1)]).toEqual([header, []]);
        }
      }
    }
  });
});

/** What a rule says when the columns of some fields are taken out of the sheet. */
function saidWithout(id: string, { headers, rows }: SheetTable, fields: readonly FieldId[]) {
  const columns = recogniseColumns(headers);
  const gone = fields.map((field) => columns[field]?.index);
  const kept = <T>(cells: readonly T[]) => cells.filter((_, i) => !gone.includes(i));
  try {
    return saidBy(id, { headers: kept(headers), rows: rows.map(kept) });
  } catch (problem) {
    // Without any column of readings nothing is checked at all.
    if (problem instanceof Problem && problem.id === "no-readings-column") return [];
    throw problem;
  }
}
