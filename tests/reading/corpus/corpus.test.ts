import { FIELDS } from "../../../src/reading/fields";
import { ENGLISH_HELD_OUT } from "./english-held-out";
import { ENGLISH_WORKED } from "./english-worked";
import type { HeaderCase } from "./header-case";

const LANGUAGES: readonly [
  language: string,
  least: number,
  worked: readonly HeaderCase[],
  heldOut: readonly HeaderCase[],
][] = [["English", 60, ENGLISH_WORKED, ENGLISH_HELD_OUT]];

const ALL = LANGUAGES.flatMap(([, , worked, heldOut]) => [...worked, ...heldOut]);

describe("the corpus of headers is whole", () => {
  test.each(LANGUAGES)(
    "%s: %d tables or more, a third of them held out",
    (_, least, worked, heldOut) => {
      const count = worked.length + heldOut.length;
      expect(count).toBeGreaterThanOrEqual(least);
      expect(heldOut.length / count).toBeGreaterThan(0.3);
      expect(heldOut.length / count).toBeLessThan(0.4);
    },
  );

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
