import { FIELD_READERS } from "../../src/reading/field-readers";
import { amountsIn } from "../../src/reading/amount-in-words";
import { tellsOfAFault } from "../../src/reading/fault-in-a-line";
import { limitsInLine } from "../../src/reading/limits-in-a-line";
import { recognise } from "../../src/reading/recognise";
import { testsNamedBy } from "../../src/reading/tests-named";
import { unitIn } from "../../src/reading/units-row";
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

const WORDS = [
  "leak",
  "leak:",
  "min ",
  "a\u2265",
  "luft A",
  "cups ",
  "alcohol 1,",
  "V1,",
  "note: ",
];
const LINES = WORDS.flatMap((word) => [
  ...[word + " ".repeat(32_000) + "x", word + ":".repeat(32_000) + "no"],
  word.repeat(Math.floor(32_000 / word.length)) + "x",
]);

test.each<[string, (text: string) => unknown]>([
  ["a header", (text) => recognise([{ headers: [text], cells: [] }])],
  ["a unit", unitIn],
  ["a fault", tellsOfAFault],
  ["an amount", (text) => amountsIn(text, true)],
  ["a limit", limitsInLine],
  ["a name", testsNamedBy([[0, "V1"]])],
])("a cell full of text is not looked at for %s longer than the text is long", (_, read) => {
  const slow = [...TEXTS, ...LINES].filter((text) => slowEachTime(() => read(text), 500));
  expect(slow.map((text) => text.slice(0, 8))).toEqual([]);
});
