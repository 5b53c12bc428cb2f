import { FIELDS } from "../../../src/reading/fields";
import { FORMS_HELD_OUT } from "./forms-held-out";
import { FORMS_WORKED } from "./forms-worked";
import { LANGUAGES } from "./languages";
import { TAILS } from "./tails";
import { VALUES } from "./values";

const ALL = LANGUAGES.flatMap(({ worked, heldOut }) => [...worked, ...heldOut]);

describe("the corpus of headers is whole", () => {
  test.each(LANGUAGES)("$language, a third held out", ({ language, worked, heldOut }) => {
    const count = worked.length + heldOut.length;
    expect(count).toBeGreaterThanOrEqual(language === "English" ? 60 : 30);
    expect(heldOut.length / count).toBeGreaterThan(0.3);
    expect(heldOut.length / count).toBeLessThan(0.4);
  });

  test("a hundred and fifty tables or more", () => {
    expect(ALL.length).toBeGreaterThanOrEqual(150);
  });

  test("no two tables have one name", () => {
    const names = ALL.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)]);
  });

  test.each(ALL.map((table) => [table.name, table] as const))("%s", (_, table) => {
    const width = table.expect.length;
    expect(table.headers.length).toBeGreaterThanOrEqual(1);
    expect(table.headers.length).toBeLessThanOrEqual(3);
    expect(table.rows.length).toBeGreaterThanOrEqual(3);
    expect(table.rows.length).toBeLessThanOrEqual(6);
    for (const row of [...table.headers, ...table.rows]) expect(row).toHaveLength(width);
    const fields = table.expect.filter((answer) => answer !== "none" && answer !== "ask");
    expect(fields.filter((field) => !(field in FIELDS))).toEqual([]);
    expect(fields).toEqual([...new Set(fields)]);
  });
});

describe("the corpus of forms is whole", () => {
  const forms = [...FORMS_WORKED, ...FORMS_HELD_OUT];

  test("twelve forms or more to work with and twelve or more held out", () => {
    expect(FORMS_WORKED.length).toBeGreaterThanOrEqual(12);
    expect(FORMS_HELD_OUT.length).toBeGreaterThanOrEqual(12);
    expect(FORMS_WORKED.filter(({ heldOut }) => heldOut)).toEqual([]);
    expect(FORMS_HELD_OUT.filter(({ heldOut }) => !heldOut)).toEqual([]);
  });

  test("no two forms have one name", () => {
    const names = forms.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)]);
  });

  test.each(forms.map((form) => [form.name, form] as const))("%s", (_, { sheets, tests }) => {
    expect(tests.length).toBeGreaterThanOrEqual(1);
    for (const { sheet, values } of tests) {
      const { cells } = sheets.find(({ name }) => name === sheet)!;
      expect(Object.keys(values).filter((field) => !(field in FIELDS))).toEqual([]);
      expect(Object.keys(values).length).toBeGreaterThanOrEqual(3);
      for (const { row, column, value } of Object.values(values)) {
        expect(cells[row]![column]).toBe(value);
      }
    }
  });
});

describe("the corpus of rows that are no tests is whole", () => {
  test.each(TAILS.map((tail) => [tail.name, tail] as const))("%s", (_, { table, testRows }) => {
    const width = table[0]!.length;
    for (const row of table) expect(row).toHaveLength(width);
    expect(testRows.length).toBeGreaterThanOrEqual(2);
    expect(testRows.length).toBeLessThan(table.length);
  });
});

describe("the corpus of values is whole", () => {
  test("every value stands once, under its header and beside its column", () => {
    const keys = VALUES.map(({ kind, written, header, column }) =>
      JSON.stringify([kind, header, written, column]),
    );
    expect(keys).toEqual([...new Set(keys)]);
  });

  test("every kind is a field, a specification or a remark", () => {
    const others = VALUES.map(({ kind }) => kind).filter((kind) => !(kind in FIELDS));
    expect([...new Set(others)].sort()).toEqual(["remark", "specification"]);
  });

  test("what could be read two ways names two", () => {
    const ways = VALUES.flatMap(({ reads }) => ("notRead" in reads ? [reads.notRead.length] : []));
    expect([...new Set(ways)].sort()).toEqual([0, 2]);
  });
});
