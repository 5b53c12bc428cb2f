import { readingsAgree } from "./meter-reading";

/** What the readings taken so far give, or what has to come next. */
export type ReadingVerdict =
  | { readonly next: "final"; readonly reading: number }
  | { readonly next: "second reading" }
  | { readonly next: "third reading" }
  | { readonly next: "void" };

/**
 * Judges the readings of one test.
 *
 * The meter is always rolled again after the first reading. A second reading that agrees with the
 * first is final. One that does not becomes the new initial reading: the meter is rolled once more,
 * and a third reading that agrees with the second is final. Otherwise the test is void and repeated
 * with more alcohol.
 *
 * @param first Initial meter reading, %.
 * @param second Reading after rolling again, %; absent when not taken yet.
 * @param third Reading after rolling a third time, %; looked at only when the second disagrees.
 * @see ASTM C173 procedure; the rule of the third reading is common practice.
 */
export function judgeReadings(first: number, second?: number, third?: number): ReadingVerdict {
  if (second === undefined) return { next: "second reading" };
  if (readingsAgree(first, second)) return { next: "final", reading: second };
  if (third === undefined) return { next: "third reading" };
  if (readingsAgree(second, third)) return { next: "final", reading: third };
  return { next: "void" };
}
