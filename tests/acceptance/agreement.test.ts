import { acceptanceMessages } from "../../src/messages/english/acceptance";
import { agreementLimit, resultsAgree } from "../../src/acceptance/agreement";
import { deviationOfResult } from "../../src/acceptance/deviation-of-result";
import { operatorsFromCell, type Operators } from "../../src/acceptance/operators";
import { precisionOfMethod } from "../../src/acceptance/precision";
import { PRECISION_TABLE } from "../../src/acceptance/precision-table";
import { resultOf } from "../check-values/result-of";

const MEMORY = "from memory, to be verified against the standard in force";

/** method, value, one operator: deviation and difference; several: deviation and difference. */
const PRECISION: readonly [string, number, number?, number?, number?, number?, string?][] = [
  ["C138", 142, 0.65, 1.85, 0.82, 2.31, MEMORY],
  ["C138M", 2275, 10.4, 29.6, 13.1, 37, MEMORY],
  ["C143", 1.2, 0.23, 0.65, 0.29, 0.82, MEMORY],
  ["C143", 3.4, 0.38, 1.07, 0.39, 1.1, MEMORY],
  ["C143", 6.5, 0.4, 1.13, 0.53, 1.5, MEMORY],
  ["C143", 9, 0.4, 1.13, 0.53, 1.5, "the highest level holds beyond it (our own rule)"],
  ["C143", 0.5, 0.23, 0.65, 0.29, 0.82, "the lowest level holds below it (our own rule)"],
  ["C143", 2.3, 0.305, 0.86, 0.34, 0.96, "derived: half-way from 1.2 to 3.4 in"],
  ["C143M", 30, 6, 17, 7, 20, `its own pairs, no conversions: ${MEMORY}`],
  ["C143M", 85, 9, 25, 10, 28, MEMORY],
  ["C143M", 160, 10, 28, 13, 37, MEMORY],
  ["C1064", 75, 0.5, 1.3, 0.7, 1.9, MEMORY],
  ["C1064M", 24, 0.3, 0.7, 0.4, 1.1, MEMORY],
  ["C231", 6, undefined, undefined, 0.28, 0.8, MEMORY],
  ["C173", 6, undefined, undefined, 0.66, 1.92, `derived: 11 % and 32 % of 6; ${MEMORY}`],
];

test.each(PRECISION)(
  "%s near %s: one operator %s and %s, several %s and %s (%s)",
  (method, value, _s1, d1, s2, d2) => {
    expect(resultOf(deviationOfResult(undefined, method))(value)).toBeCloseTo(s2!, 10);
    expect(agreementLimit(value, value, method)).toBeCloseTo(d2!, 9);
    const one = agreementLimit(value, value, method, "one");
    if (d1 !== undefined) expect(one).toBeCloseTo(d1, 9);
    else expect(one).toMatchObject({ id: "precision-not-established" });
  },
);

test("every published difference is 2√2 deviations, rounded (from memory, ASTM C670)", () => {
  for (const { one = [], several } of PRECISION_TABLE) {
    for (const { deviation, difference } of [...one, ...several]) {
      expect(Math.abs(difference / deviation / (2 * Math.SQRT2) - 1)).toBeLessThan(0.2);
    }
  }
});

test("every figure says how far it is to be trusted", () => {
  for (const { source } of PRECISION_TABLE) expect(acceptanceMessages[source]).toContain(MEMORY);
});

test.each<[number, number, string, Operators, boolean, string]>([
  [5.5, 6.3, "C231", "several", true, "derived: they differ by just 0.8"],
  [5.5, 6.31, "C231", "several", false, "derived: they differ by 0.81"],
  [5, 6.9, "C173", "several", true, "derived: 1.9 is not more than 0.32 × 5.95 = 1.904"],
  [5, 7, "C173", "several", false, "derived: 2.0 is more than 0.32 × 6 = 1.92"],
  [142, 144, "C138", "several", true, "derived: 2.0 is not more than 2.31"],
  [142, 144, "C138", "one", false, "derived: 2.0 is more than 1.85"],
  [5.9, 6.7, "T 152", "several", true, "AASHTO T 152 is the same method (common practice)"],
  [0, 0, "C173", "several", true, "derived: two equal results agree"],
])("%s and %s by %s, %s: agree %s (%s)", (a, b, method, operators, agree) => {
  expect(resultsAgree(a, b, method, operators)).toBe(agree);
  expect(resultsAgree(b, a, method, operators)).toBe(agree);
});

test.each([
  ["c173", "C173"],
  ["ASTM C173/C173M-16", "C173"],
  ["AASHTO T 196", "C173"],
  ["T152", "C231"],
  [" ASTM C 138 ", "C138"],
  ["C1064M", "C1064M"],
])("“%s” is the method %s", (written, name) => {
  expect(resultOf(precisionOfMethod(written)).names[0]).toBe(name);
});

test.each(["", "C39", "air", "C138/C138M", "C1"])("“%s” is no method on file", (written) => {
  expect(precisionOfMethod(written)).toMatchObject({ id: "precision-method-unknown" });
});

test.each([
  [2275, 2300, "C138"],
  [142, 144, "C138M"],
  [142, 2300, "C138"],
  [-1, 6, "C173"],
  [6, 101, "C231"],
  [85, 90, "C143"],
  [12, 20, "C1064"],
])("%s and %s cannot both be results by %s", (a, b, method) => {
  expect(agreementLimit(a, b, method)).toMatchObject({ id: "value-not-in-unit" });
});

test.each([
  ["one", "one"],
  ["1", "one"],
  ["Single operator", "one"],
  ["several", "several"],
  ["2", "several"],
  [" Multi-operator ", "several"],
])("“%s” stands for %s", (word, operators) => expect(operatorsFromCell(word)).toBe(operators));

test("another word for the operators is refused", () => {
  expect(operatorsFromCell("both")).toMatchObject({ id: "operators-unknown" });
});

test.each([0, -0.3, NaN])("%s is no deviation", (given) => {
  expect(deviationOfResult(given)).toMatchObject({ id: "deviation-not-above-zero" });
});
