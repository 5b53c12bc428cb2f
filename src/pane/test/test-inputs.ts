import type { BorderlineTest } from "../../acceptance/borderline-test";
import type { CheckResult } from "../../fieldsheet/check-result";
import type { TestResult } from "../../fieldsheet/test-result";
import { alcoholFromCell } from "../../measure/alcohol";
import type { DecimalMark } from "../../measure/number-from-cell";
import { Problem } from "../../measure/problem";
import { say, sentenceOf } from "../../messages/pane-catalogue";
import { inOneGo } from "../../reading/steps";
import { typedLimits, typedNumber } from "../state/typed-limits";
import { typedText } from "../kit/shown-number";

/** The inputs of one test as they are typed. */
export const TEST_INPUTS = ["reading", "cups", "alcohol", "low", "high", "check"] as const;
export type TestInput = (typeof TEST_INPUTS)[number];
export type TestInputs = Readonly<Record<TestInput, string>>;

export const NO_INPUTS: TestInputs = {
  reading: "",
  cups: "",
  alcohol: "",
  low: "",
  high: "",
  check: "",
};

/** What a checked row gives for the inputs; its check test is in another row of the same sample. */
export function inputsOfRow(
  { record, finalReading, values, limits }: TestResult,
  { tests }: CheckResult,
  decimal: DecimalMark,
): TestInputs {
  const failures = inOneGo(tests.failures());
  const check = failures.find(({ first }) => first.record === record)?.check;
  const text = (value: number | undefined) => typedText(value, decimal);
  const { alcohol } = values;
  return {
    reading: text(finalReading),
    cups: text(values.cups),
    alcohol: alcohol ? `${text(alcohol.amount)} ${alcohol.unit}` : "",
    low: text(limits.low),
    high: text(limits.high),
    check: text(check?.result?.air),
  };
}

/**
 * The test that stands in the inputs; `undefined` without a reading.
 *
 * @param scaleEnd Where the scale of the meter ends, %; 9 when absent.
 * @throws Problem, with the label of the input as its place, where an input cannot be read.
 */
export function testOfInputs(
  typed: TestInputs,
  decimal: DecimalMark,
  scaleEnd?: number,
): { readonly test: BorderlineTest; readonly check?: number } | undefined {
  const number = (input: TestInput) =>
    typedNumber(typed[input], say(`test-input-${input}`), decimal);
  const reading = number("reading");
  if (reading === undefined) return undefined;
  return {
    test: {
      reading,
      cups: number("cups"),
      alcohol: typedAlcohol(typed.alcohol, decimal) ?? { amount: 0, unit: "oz" },
      limits: typedLimits(typed, decimal),
      scaleEnd,
    },
    check: number("check"),
  };
}

/** What is wrong with one input; "" for nothing. */
export function complaintAbout(input: TestInput, typed: string, decimal: DecimalMark): string {
  try {
    if (input === "alcohol") typedAlcohol(typed, decimal);
    else typedNumber(typed, "", decimal);
    return "";
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return sentenceOf(problem.id, problem.values);
  }
}

function typedAlcohol(typed: string, decimal: DecimalMark) {
  return Problem.unless(alcoholFromCell(typed, undefined, decimal), say("test-input-alcohol"));
}
