import { airSpecified } from "../../src/functions/specified-air";
import { PRINTED_TABLES, WORKED_SPECIFICATIONS } from "../check-values/specified-air";
import { checkRefused, inOneCell } from "./one-cell";

describe.each(PRINTED_TABLES)("FRESH.AIR.SPECIFIED by $name ($source)", ({ name, sizes, rows }) => {
  test.each(rows)("exposure %s", (exposure, ...air) => {
    expect(sizes.map((size) => inOneCell(airSpecified, [size, exposure, null, name]))).toEqual(air);
  });
});

test.each(WORKED_SPECIFICATIONS)("FRESH.AIR.SPECIFIED of %j is %s (%s)", (given, air) => {
  expect(inOneCell(airSpecified, given)).toBe(air);
});

test.each([
  [0.75, "us"],
  ["3/4", "us"],
  ["3/4 in", "us"],
  ['3/4"', "us"],
  ["¾ in.", "us"],
  ["0.75 inch", "si"],
  ["19 mm", "us"],
  ["19mm", "us"],
  [19, "si"],
])("an aggregate of %j in %j is 3/4 in (common practice)", (size, units) => {
  expect(inOneCell(airSpecified, [size, "F1", null, null, units])).toBe(5);
});

checkRefused("AIR.SPECIFIED", airSpecified, [
  [
    ["5/8", "F1"],
    /^#VALUE! Aggregate: the table of ACI 318-19 has no aggregate size of 0.625 in. It has: 3\/8 in \(9.5 mm\), .*3 in \(75 mm\)/,
  ],
  [["3/4 in", "1", null, "CSA A23.1"], /no aggregate size of 0.75 in. It has: 10 mm, 14 mm/],
  [["6 in", "severe", null, "ACI 211.1"], /no aggregate size of 6 in/],
  [[0.75, "F9"], /^#VALUE! Exposure: “F9” is not an exposure .*It has: F1, F2, F3/],
  [
    [0.75, "F1", null, "BS 1"],
    /^#VALUE! Source: “BS 1” .*ACI 318-19, ACI 211.1, CSA A23.1, EN 206/,
  ],
  [[19, "F1"], /^#VALUE! Aggregate: an aggregate size of 19 in cannot be. Give "si" as units/],
  [[46085, "F1"], /^#VALUE! Aggregate: 46085 is the number of a date/],
  [[0.75, "F1", 35], /^#VALUE! Strength: a strength of 35 psi cannot be. Give "si"/],
  [[null, "F1"], /^#VALUE! Aggregate: nothing is given/],
  [
    ["coarse", "F1"],
    /^#VALUE! Aggregate: “coarse” cannot be an aggregate size. Write it with its unit/,
  ],
]);
