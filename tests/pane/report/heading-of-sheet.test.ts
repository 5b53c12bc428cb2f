import type { CellValue } from "../../../src/measure/cell-value";
import { headingOfSheet } from "../../../src/pane/report/heading-of-sheet";
import { checkedSheet } from "./checked-sheet";

const HEADER = ["Sample", "First reading", "Second reading", "Alcohol (oz)"];
const TEST = ["L-1", 6, 6, 16];

function headingOf(values: CellValue[][], above: CellValue[][] = []) {
  const checked = checkedSheet(values, above.length);
  return headingOfSheet(checked, checked.result.results, above);
}

test.each<[what: string, values: CellValue[][], heading: object]>([
  [
    "labels above the table, with the value behind a colon or in a cell beside",
    [
      ["Project: Kestrel viaduct"],
      ["Location", null, "Deck 4"],
      ["Tested by:", "R. O."],
      HEADER,
      TEST,
    ],
    { project: "Kestrel viaduct", location: "Deck 4", testers: "R. O." },
  ],
  [
    "a label with nothing behind it, and another label beside it",
    [["Project:", "Location:", "Deck 4"], ["Site", null, null], HEADER, TEST],
    { location: "Deck 4" },
  ],
  [
    "columns: different values in their order, each once",
    [
      [...HEADER, "Date", "Mix", "Technician", "Meter", "Meter checked"],
      [...TEST, "2026-06-10", "M1", "R. O.", "7", "2026-03-02"],
      [...TEST, "2026-06-11", "M1", "A. B.", "7", "2026-03-02"],
    ],
    {
      date: "2026-06-10, 2026-06-11",
      mix: "M1",
      testers: "R. O., A. B.",
      meter: "7",
      meterCheck: "2026-03-02",
    },
  ],
  [
    "limits of the tests behind the specification that a label names",
    [
      ["Specification", "Section 5.2"],
      [...HEADER, "Low limit", "High limit"],
      [...TEST, 5, 8],
    ],
    { specification: "Section 5.2; 5 to 8 %" },
  ],
  [
    "labels in Spanish",
    [["Proyecto: Viaducto"], ["Ubicación", "Losa 4"], ["Laboratorista", "R. O."], HEADER, TEST],
    { project: "Viaducto", location: "Losa 4", testers: "R. O." },
  ],
  ["a sentence that only begins so", [["The project is late"], HEADER, TEST], {}],
])("%s", (_, values, heading) => {
  expect(headingOf(values)).toEqual(heading);
});

test("many different values are counted", () => {
  const tests = Array.from({ length: 9 }, (_, i) => [...TEST, `M${i}`]);
  expect(headingOf([[...HEADER, "Mix"], ...tests])).toEqual({
    mix: "M0, M1, M2, M3, M4, M5 and 3 more, see the table",
  });
});

test("labels further up on the sheet count as well", () => {
  expect(headingOf([HEADER, TEST], [["Job", "Bridge 4"], [null]])).toEqual({ project: "Bridge 4" });
});

test("labels of a form", () => {
  const form = [
    ["Project", "Bridge 4"],
    ["Technician:", "R. O."],
    ["Sample", "L-1"],
    ["First reading", 6],
    ["Second reading", 6],
    ["Alcohol (oz)", 16],
    ["Foam", 1],
  ];
  expect(headingOf(form)).toMatchObject({ project: "Bridge 4", testers: "R. O." });
});
