import { ErrorSentences, offsetKey } from "../../src/workbench/functions/error-sentences";

const D1 = { sheetId: "s", row: 0, column: 3 };
const errorAt = (row: number, column: number, sentence: string) =>
  new Map([[offsetKey(row, column), sentence]]);

test("a sentence is kept for the cell of a spill that shows the error", () => {
  const sentences = new ErrorSentences();
  sentences.keep("FRESH.AIR", D1, errorAt(1, 0, "Type a number."));
  expect(sentences.about({ ...D1, row: 1 })).toBe("Type a number.");
  expect(sentences.about(D1)).toBeUndefined();
  expect(sentences.about({ ...D1, row: 1, sheetId: "other" })).toBeUndefined();
});

test("a function that succeeds takes back its own sentence only", () => {
  const sentences = new ErrorSentences();
  sentences.keep("FRESH.AIR", D1, errorAt(0, 0, "No unit."));
  sentences.keep("FRESH.DENSITY", D1, new Map());
  expect(sentences.about(D1)).toBe("No unit.");
  sentences.keep("FRESH.AIR", D1, new Map());
  expect(sentences.about(D1)).toBeUndefined();
});
