import cdf from "@stdlib/stats-base-dists-t-cdf";
import { studentTails } from "../../src/acceptance/student-distribution";

const FREEDOM = [0.5, 1, 1.7, 2, 3, 5, 10, 29.3, 78, 80, 100, 363.5, 1000];
const VALUES = Array.from({ length: 80 }, (_, i) => 0.01 * 1.1 ** i);

test("both tails are those of a reference library to 1e-12 of themselves", () => {
  const apart = FREEDOM.flatMap((freedom) =>
    VALUES.map((t) => Math.abs(studentTails(t, freedom) / (2 * cdf(-t, freedom)) - 1)),
  );
  expect(Math.max(...apart)).toBeLessThan(1e-12);
});

test.each([
  [12.706, 1, 0.05, "Student's table"],
  [2.228, 10, 0.05, "Student's table"],
  [2.75, 30, 0.01, "Student's table"],
  [1, 1, 0.5, "derived: Cauchy, 1 − 2 arctan(1) / π"],
])("beyond ± %s with %s degrees of freedom lie %s (%s)", (t, freedom, share) => {
  expect(studentTails(t, freedom)).toBeCloseTo(share, 4);
  expect(studentTails(-t, freedom)).toBe(studentTails(t, freedom));
});

test("all lies beyond 0, nothing beyond infinity", () => {
  expect([studentTails(0, 4), studentTails(Infinity, 4)]).toEqual([1, 0]);
});
