import { Problem } from "../measure/problem";
import { deviationAt, precisionOfMethod, USUAL_METHOD } from "./precision";

/**
 * The standard deviation of one result, for any value it may have.
 *
 * @param given The user's own deviation, above 0, in the unit of the result; it goes before all.
 * @param method Method whose published precision is taken instead; C173 unless given.
 * @throws Problem `deviation-not-above-zero`, those of `precisionOfMethod`, and when called those of
 *   `deviationAt`.
 */
export function deviationOfResult(
  given: number | undefined,
  method: string = USUAL_METHOD,
): (value: number) => number {
  // A method that nobody knows is said so, also where it is not needed.
  const published = precisionOfMethod(method);
  if (given !== undefined) {
    if (!(given > 0)) throw new Problem("deviation-not-above-zero", { value: given });
    return () => given;
  }
  return (value) => deviationAt(published, value);
}
