import { WEIGHTS } from "../../src/fieldsheet/finding";
import { markFormula, weightOfFormula } from "../../src/hosts/mark-tag";

test.each(WEIGHTS)(
  "the formula of a %s mark is known again, also from a file, with spaces and in another language of Excel",
  (weight) => {
    expect(weightOfFormula(markFormula(weight))).toBe(weight);
    expect(weightOfFormula(`=LEN( "fresh-mark-${weight}" )>0`)).toBe(weight);
    expect(weightOfFormula(`LEN("fresh-mark-${weight}")>0`)).toBe(weight);
    // LEN in German, French and Russian Excel.
    for (const name of ["LÄNGE", "NBCAR", "ДЛСТР"]) {
      expect(weightOfFormula(`=${name}("fresh-mark-${weight}")>0`)).toBe(weight);
    }
  },
);

test.each([
  "=LEN(A1)>0",
  '=A1="fresh"',
  '="fresh-mark"&"-void"',
  '=AND(LEN("fresh-mark-void")>0,A1>5)',
  '=LEN("fresh-mark-void")>0+A1',
  '=LEN("fresh-mark-mine")>0',
  "",
])("a formula of anybody else, or one that somebody has changed, is not ours: %s", (formula) => {
  expect(weightOfFormula(formula)).toBeUndefined();
});
