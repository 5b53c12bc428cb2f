import { firstSpelling } from "../../measure/first-spelling";
import { issue, type Issue } from "../../measure/issue";
import { studentTails } from "../student-distribution";
import { pairedDifference } from "./paired";
import type { SideBySide } from "./side-by-side";
import { unpairedDifference } from "./unpaired";

/** One test: its air content (or any other result), who made it, and the mix it was made of. */
export interface TestBy {
  readonly value: number;
  /** Technician, meter, plant: whatever is compared. */
  readonly who: string;
  /** Mix; for split samples the sample. Tests are compared within it only. */
  readonly mix: string;
}

/** How one of them stands to the others. */
export interface Bias {
  readonly who: string;
  /** How many tests could be compared; of paired ones, how many samples. */
  readonly tests: number;
  /** Mean difference from the others; absent where no other tested the same mix. */
  readonly difference?: number;
  readonly standardError?: number;
  readonly t?: number;
  readonly freedom?: number;
  /** As in `Difference`; of split samples absent. */
  readonly scatter?: number;
  /** Chance of so large a difference, either way, where there is none. */
  readonly p?: number;
}

/**
 * Compares each technician (meter, plant …) with the others on the same mixes.
 *
 * Tests of different mixes are never compared with each other. Where there are several names, some
 * p will be small by chance: of twenty, one is below 0.05 though nobody differs.
 *
 * @param tests In any order; who comes first is listed first.
 * @param paired Whether the samples were split: then the differences within each sample are what
 *   counts, and not how much the samples differ.
 * @returns One line for each name, or the issue `nobody-to-compare`.
 * @see Welch's t test, within mixes; the paired t test for split samples (a state department's
 *   manual, 5.2.6, uses the t test of split samples).
 */
export function biasOf(tests: readonly TestBy[], paired = false): readonly Bias[] | Issue {
  const [nameOf, mixOf] = [firstSpelling(), firstSpelling()];
  const spelled = tests.map((test) => ({ ...test, who: nameOf(test.who), mix: mixOf(test.mix) }));
  const byMix = grouped(spelled, ({ mix }) => mix);
  const names = [...new Set(spelled.map(({ who }) => who))];
  const lines = names.map((who) => lineOf(who, [...byMix.values()], paired));
  return lines.some(({ difference }) => difference !== undefined)
    ? lines
    : issue("nobody-to-compare");
}

function lineOf(who: string, mixes: readonly (readonly TestBy[])[], paired: boolean): Bias {
  const compared = mixes
    .map((tests): SideBySide => {
      const valuesWhere = (isHis: boolean) =>
        tests.filter((test) => (test.who === who) === isHis).map(({ value }) => value);
      return { his: valuesWhere(true), others: valuesWhere(false) };
    })
    .filter(({ his, others }) => his.length > 0 && others.length > 0);
  if (compared.length === 0) return { who, tests: 0 };
  const tests = paired ? compared.length : compared.reduce((sum, { his }) => sum + his.length, 0);
  const found = paired ? pairedDifference(compared) : unpairedDifference(compared);
  const { difference, standardError, freedom, scatter } = found;
  // Without any scatter there is no chance to speak of.
  if (!standardError || !freedom) return { who, tests, difference, standardError };
  const t = difference / standardError;
  const p = studentTails(t, freedom);
  return { who, tests, difference, standardError, t, freedom, scatter, p };
}

function grouped<T>(items: readonly T[], by: (item: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(by(item));
    if (group) group.push(item);
    else groups.set(by(item), [item]);
  }
  return groups;
}
