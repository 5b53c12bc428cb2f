import { writtenFormula } from "../../src/workbench/files/formula-text";

test.each([
  ["_xldudf_FRESH_AIR(A1)", "=FRESH.AIR(A1)"],
  ['_xldudf_FRESH_ALCOHOL_CORRECTION(J2,"oz")', '=FRESH.ALCOHOL.CORRECTION(J2,"oz")'],
  [
    "IF(A1>5,_xldudf_FRESH_AIR(A1),_xldudf_FRESH_ROUND_STEP(A1,0.5))",
    "=IF(A1>5,FRESH.AIR(A1),FRESH.ROUND.STEP(A1,0.5))",
  ],
  ["_xlfn.CONCAT(A1:A3)", "=CONCAT(A1:A3)"],
  ["_xlfn._xlws.FILTER(A1:A3,B1:B3)", "=FILTER(A1:A3,B1:B3)"],
  ["SUM(A1:A3)", "=SUM(A1:A3)"],
])("a formula stored as %s is written %s", (stored, written) => {
  expect(writtenFormula(stored)).toBe(written);
});
