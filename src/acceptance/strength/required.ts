import { at, isIssue, issue, unavailable, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import type { UnitSystem } from "../../measure/unit-system";
import { leastSingleTest } from "./criteria";

/** Deviations above the mean that hold the mean of three at 1 failure in 100: 2.33 / √3. */
const FOR_MEAN_OF_THREE = 1.34;

/** Deviations that hold a single test at 1 failure in 100. */
const FOR_SINGLE_TEST = 2.33;

/** Factor on a deviation from few tests; in a straight line between (trade articles quoting ACI). */
export const FEW_TESTS_TABLE = [
  { tests: 15, factor: 1.16 },
  { tests: 20, factor: 1.08 },
  { tests: 25, factor: 1.03 },
  { tests: 30, factor: 1 },
] as const;

/**
 * Average strength f′cr that a mix must be designed for.
 *
 * @param specified Specified strength f′c, psi or MPa.
 * @param deviation Standard deviation of the tests on record, in the same unit.
 * @param tests How many tests the deviation comes from; 15 at least.
 * @returns In the same unit. The issue `deviation-from-too-few`, `tests-not-whole`, or one of
 *   `implausible`, in its place.
 * @see ACI 318 and ACI 301, required average strength (trade articles quoting ACI).
 */
export function requiredStrength(
  specified: number,
  deviation: number,
  tests: number,
  system: UnitSystem,
): number | Issue {
  const wrong =
    at("specified", implausible(specified, QUANTITIES.strength, system)) ??
    at("deviation", implausible(deviation, QUANTITIES.strengthDeviation, system));
  if (wrong) return wrong;
  const factor = fewTestsFactor(tests);
  if (isIssue(factor)) return at("tests", factor);
  const s = deviation * factor;
  return Math.max(
    specified + FOR_MEAN_OF_THREE * s,
    leastSingleTest(specified, system) + FOR_SINGLE_TEST * s,
  );
}

/** Factor on a standard deviation from a number of tests. */
export function fewTestsFactor(tests: number): number | Issue {
  if (!Number.isInteger(tests)) return issue("tests-not-whole", { value: tests });
  const least = FEW_TESTS_TABLE[0].tests;
  if (tests < least) return unavailable("deviation-from-too-few", { tests, least });
  const upper = FEW_TESTS_TABLE.findIndex((row) => row.tests >= tests);
  if (upper < 0) return 1;
  const above = FEW_TESTS_TABLE[upper]!;
  const below = FEW_TESTS_TABLE[upper - 1] ?? above;
  if (above.tests === below.tests) return above.factor;
  const share = (tests - below.tests) / (above.tests - below.tests);
  return below.factor + share * (above.factor - below.factor);
}
