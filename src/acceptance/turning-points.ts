import { isIssue } from "../measure/issue";
import { exact } from "../measure/rounding";
import { GRADUATION, SCALE_END } from "../methods/volumetric-air/meter-reading";
import { measuredAmounts } from "./alcohol-steps";
import { outcomeOf, type BorderlineTest } from "./borderline-test";
import type { Verdict } from "./limits";

/** The smallest change of one input alone that changes the verdict. */
export interface TurningPoint {
  readonly input: "reading" | "cups" | "alcohol";
  readonly from: number;
  readonly to: number;
  /** `to` less `from`. */
  readonly change: number;
  /** "%" for the reading, "" for cups, the unit of the alcohol. */
  readonly unit: string;
  /** Air content after the change, %. */
  readonly air: number;
  readonly verdict: Verdict;
}

/** More cups than anybody would add; the search ends here. */
const MOST_CUPS = 30;

/**
 * How much it would take: for each input, the smallest change that changes the verdict while the
 * others stay as recorded, down and up where both are equally small. Readings move on the
 * quarter-percent grid, cups by one, alcohol on the marks of its measure. An input that cannot change
 * the verdict is not listed.
 *
 * @param test Test as recorded; without limits, or when it has no result, nothing is listed.
 */
export function turningPoints(test: BorderlineTest): readonly TurningPoint[] {
  const { reading, cups = 0, alcohol, scaleEnd = SCALE_END } = test;
  const graduations = Math.floor(scaleEnd / GRADUATION);
  const readings = Array.from({ length: graduations + 1 }, (_, i) => i * GRADUATION);
  const counts = Array.from({ length: MOST_CUPS + 1 }, (_, i) => i);
  return [
    ...turns(test, "reading", "%", reading, readings, (to) => ({ ...test, reading: to })),
    ...turns(test, "cups", "", cups, counts, (to) => ({ ...test, cups: to })),
    ...(alcohol
      ? turns(
          test,
          "alcohol",
          alcohol.unit,
          alcohol.amount,
          measuredAmounts(alcohol.unit),
          (to) => ({
            ...test,
            alcohol: { amount: to, unit: alcohol.unit },
          }),
        )
      : []),
  ];
}

function turns(
  test: BorderlineTest,
  input: TurningPoint["input"],
  unit: string,
  from: number,
  candidates: readonly number[],
  changed: (to: number) => BorderlineTest,
): readonly TurningPoint[] {
  const recorded = outcomeOf(test);
  if (isIssue(recorded) || recorded.verdict === undefined) return [];
  const nearest = (inOrder: readonly number[]): TurningPoint[] => {
    for (const to of inOrder) {
      const outcome = outcomeOf(changed(to));
      if (isIssue(outcome)) continue;
      if (outcome.verdict !== recorded.verdict) {
        const { air, verdict } = outcome;
        return [{ input, from, to, change: exact(to - from), unit, air, verdict: verdict! }];
      }
    }
    return [];
  };
  const found = [
    ...nearest(candidates.filter((to) => to < from).reverse()),
    ...nearest(candidates.filter((to) => to > from)),
  ];
  const least = Math.min(...found.map(({ change }) => Math.abs(change)));
  return found.filter(({ change }) => Math.abs(change) === least);
}
