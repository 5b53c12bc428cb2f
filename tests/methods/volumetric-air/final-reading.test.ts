import fc from "fast-check";
import {
  judgeReadings,
  type ReadingVerdict,
} from "../../../src/methods/volumetric-air/final-reading";
import { MANUAL_2019, STUDY_GUIDE, WORKED_TESTS } from "../../check-values/volumetric-air";

const PRACTICE = "common practice";

const VERDICTS: [number[], ReadingVerdict, string][] = [
  [[5.5], { next: "second reading" }, MANUAL_2019],
  [[5.5, 5.75], { next: "final", reading: 5.75 }, STUDY_GUIDE],
  [[5.5, 5.25], { next: "final", reading: 5.25 }, `${PRACTICE}: exactly 0.25 is agreement`],
  [[5.5, 6.25], { next: "third reading" }, STUDY_GUIDE],
  [[5.5, 6.25, 6.25], { next: "final", reading: 6.25 }, STUDY_GUIDE],
  [[5.5, 6.25, 6], { next: "final", reading: 6 }, PRACTICE],
  [[5, 5.5, 6], { next: "void" }, PRACTICE],
  [[5, 5.5, 5], { next: "void" }, `${PRACTICE}: the third is compared with the second only`],
  [
    [5, 5, 9],
    { next: "final", reading: 5 },
    `${PRACTICE}: a third reading that was not due says nothing`,
  ],
  [[0, 0], { next: "final", reading: 0 }, "0 is on the scale (Louisiana DOTD TR 202, 2008)"],
];

test.each(VERDICTS)("%j gives %j (%s)", ([first, second, third], verdict) => {
  expect(judgeReadings(first!, second, third)).toEqual(verdict);
});

test.each(WORKED_TESTS)("$name: $readings ($source)", ({ readings, air }) => {
  const verdict = judgeReadings(...readings);
  if (typeof air === "string") expect(verdict.next).toBe(air);
  else expect(verdict).toEqual({ next: "final", reading: readings.at(-1) });
});

const quarter = fc.integer({ min: 0, max: 36 }).map((quarters) => quarters / 4);

test("the final reading is always the last one that counted, and agrees with the one before", () => {
  fc.assert(
    fc.property(quarter, quarter, quarter, (first, second, third) => {
      const verdict = judgeReadings(first, second, third);
      const agree = Math.abs(first - second) <= 0.25;
      if (agree) expect(verdict).toEqual({ next: "final", reading: second });
      else if (Math.abs(second - third) <= 0.25)
        expect(verdict).toEqual({ next: "final", reading: third });
      else expect(verdict).toEqual({ next: "void" });
    }),
  );
});
