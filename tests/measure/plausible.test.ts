import fc from "fast-check";
import { canBe, implausible, QUANTITIES } from "../../src/measure/plausible";
import { unitSystemFromCell } from "../../src/measure/unit-system";

test.each(["density", "strength", "aggregateSize"] as const)(
  "no %s can be in both systems, so that none is taken for the other",
  (name) => {
    const { limits } = QUANTITIES[name];
    expect(limits.us[1] < limits.si[0] || limits.si[1] < limits.us[0]).toBe(true);
  },
);

test("nothing is wrong with a value that can be; another is refused, and where it can be is said", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.values(QUANTITIES)),
      fc.constantFrom("us" as const, "si" as const),
      fc.double({ min: -100, max: 50_000, noNaN: true }),
      (quantity, system, value) => {
        const wrong = implausible(value, quantity, system);
        if (canBe(value, quantity, system)) return expect(wrong).toBeUndefined();
        const other = system === "us" ? "si" : "us";
        const id = canBe(value, quantity, other) ? "value-in-other-system" : "value-cannot-be";
        expect(wrong).toMatchObject({ id, values: { other } });
      },
    ),
  );
});

test.each([
  ["us", "us"],
  [" SI ", "si"],
] as const)("%j names the system %s", (written, system) => {
  expect(unitSystemFromCell(written)).toBe(system);
});

test.each(["metric", "", 1, true])("%j names no system", (written) => {
  expect(unitSystemFromCell(written)).toMatchObject({ id: "system-unknown" });
});
