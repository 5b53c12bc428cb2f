import fc from "fast-check";
import { WEIGHTS } from "../../src/fieldsheet/rule";
import {
  addedToOurNote,
  isOurNote,
  markFormula,
  noteText,
  weightOfFormula,
} from "../../src/hosts/mark-tag";

test.each(WEIGHTS)(
  "the formula of a %s mark is known again, as Excel hands it back or not",
  (weight) => {
    expect(weightOfFormula(markFormula(weight))).toBe(weight);
    expect(weightOfFormula(`=LEN( "fresh-mark-${weight}" )>0`)).toBe(weight);
  },
);

test.each(["=LEN(A1)>0", '=A1="fresh"', '="fresh-mark"&"-void"', ""])(
  "a formula of anybody else is not ours: %s",
  (formula) => {
    expect(weightOfFormula(formula)).toBeUndefined();
  },
);

test.each(["Checked with care", "Ask.\nChecked with FRESH (3)", "Checked with FRESH", ""])(
  "a note of anybody else is not ours: %j",
  (text) => {
    expect(isOurNote(text)).toBe(false);
  },
);

test("whatever somebody writes behind our sentences is told apart from them", () => {
  const sentences = fc.array(fc.string({ minLength: 1 }), { maxLength: 3 });
  fc.assert(
    fc.property(sentences, fc.string(), fc.constantFrom("\n", "\r\n", "\r"), (ours, added, end) => {
      const text = `${noteText(ours)}${end}${added}`.replace(/\r\n|\r|\n/g, end);
      expect(isOurNote(text)).toBe(true);
      expect(addedToOurNote(text)).toBe(added.replace(/\r\n?/g, "\n").trim());
    }),
  );
});

test("a note of ours that nobody has touched holds nothing else", () => {
  expect(addedToOurNote(noteText(["Look at it.", "A cell says “a\r\nb”."]))).toBe("");
  expect(addedToOurNote(noteText([]))).toBe("");
});
