import { FIELD_READERS } from "../../src/reading/field-readers";
import { slowEachTime } from "../slow-each-time";

/** What patterns may trip over when it is repeated until the cell is full. */
const PARTS = [
  ...["1", "0", " ", "1 ", ",", ", ", ".", ". ", "((", "-", "– ", "/", "1/", "1-", "½", "±", "<"],
  ...["a", "a ", "a,", "x", "and ", "no ", "1 to ", "1:", "'", '"', "\n", "😀"],
];
const TEXTS = PARTS.flatMap((part) => {
  const filled = part.repeat(Math.floor(32_700 / part.length));
  return [filled, `1${filled}x`, `a${filled}1`];
});

test.each(Object.entries(FIELD_READERS))(
  "a cell full of text takes no %s reader longer than the text is long",
  (_, read) => {
    // One that grew with the square of the length took a second and more; these take 10 ms.
    const slow = TEXTS.filter((text) => slowEachTime(() => read(text, { decimal: "." }), 500));
    expect(slow.map((text) => text.slice(0, 8))).toEqual([]);
  },
);
