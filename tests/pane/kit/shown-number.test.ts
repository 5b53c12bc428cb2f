import {
  shownChance,
  shownChange,
  shownDeviation,
  shownPercent,
  shownStep,
  typedText,
} from "../../../src/pane/kit/shown-number";

test.each([
  [7.5, ".", "7.50"],
  [7.5, ",", "7,50"],
  [6.410000000000001, ".", "6.41"],
] as const)("%p is shown as a percentage with %p", (value, decimal, shown) => {
  expect(shownPercent(value, decimal)).toBe(shown);
});

test.each([
  [0.25, "+0.25"],
  [-0.6, "−0.60"],
  [-0.225, "−0.225"],
  [0, "±0.00"],
])("a change of %p is shown as %p", (value, shown) => {
  expect(shownChange(value, ".")).toBe(shown);
});

test("the steps of a calculation add up as shown (derived: 7.75 − 0.225 = 7.525)", () => {
  expect([7.75, 7.525, 7.5, 10].map((value) => shownStep(value, "."))).toEqual([
    "7.75",
    "7.525",
    "7.50",
    "10.00",
  ]);
});

test.each([
  [undefined, ""],
  [0, "0"],
  [7.25, "7,25"],
])("%p is typed as %p: a blank is not a zero", (value, typed) => {
  expect(typedText(value, ",")).toBe(typed);
});

test.each([
  [0.11 * 7.5, ".", "0.825"],
  [0.11 * 7.75, ".", "0.853"],
  [0.28, ",", "0,28"],
] as const)("a deviation of %p is shown with %p as %p", (value, decimal, shown) => {
  expect(shownDeviation(value, decimal)).toBe(shown);
});

test.each([
  [0.814, "81 %"],
  [0.9999, "> 99 %"],
  [1, "> 99 %"],
  [0.001, "< 1 %"],
])("a chance of %p is shown as %p and never as certain", (chance, shown) => {
  expect(shownChance(chance)).toBe(shown);
});
