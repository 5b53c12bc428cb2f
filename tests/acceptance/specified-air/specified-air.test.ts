import {
  SPECIFIED_AIR_TABLES,
  specifiedAir,
} from "../../../src/acceptance/specified-air/specified-air";

test.each(SPECIFIED_AIR_TABLES)("$name: no row is longer than there are sizes", (table) => {
  for (const row of Object.values(table.air)) {
    expect(row.length).toBeGreaterThan(0);
    expect(row.length).toBeLessThanOrEqual(table.sizes?.length ?? 1);
  }
});

test("larger aggregate never asks for more air (common practice: less paste, less air)", () => {
  for (const { air } of SPECIFIED_AIR_TABLES) {
    for (const row of Object.values(air)) {
      expect(row).toEqual([...row].sort((one, other) => other - one));
    }
  }
});

test("names are read without regard to case, spaces and dashes", () => {
  const aggregate = { size: 20, unit: "mm" } as const;
  expect(specifiedAir({ aggregate, exposure: "Category 2" }, "csa  a23.1", "si")).toBe(5.5);
});
