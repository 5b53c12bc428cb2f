import { marksOfFindings } from "../../../src/pane/state/marks-of-findings";
import { checkedSheet } from "../report/checked-sheet";

const HEADERS = ["Sample", "First reading", "Second reading", "Alcohol (pt)", "Spec", "Slump (in)"];
const ROW = ["S-1", 5.25, 5.25, 1, "4.5-7.5", 4];

test("a column that was not read is marked at its header", () => {
  const marks = marksOfFindings(
    checkedSheet([["A title"], HEADERS, ROW, ["S-2", ...ROW.slice(1)]], 3),
  );
  const [mark] = marks.filter(({ sentences }) => /“Spec”/.test(sentences[0]!));
  expect(mark).toMatchObject({ row: 4, column: 4, weight: "note" });
});

test("where a column that was not read may give limits, it is not said that there are none", () => {
  const { result } = checkedSheet([HEADERS, ROW]);
  expect(result.notLookedAt.at(-1)).toBe("limits-unread");
  expect(checkedSheet([HEADERS.slice(0, 4), ROW.slice(0, 4)]).result.notLookedAt.at(-1)).toBe(
    "limits",
  );
});
