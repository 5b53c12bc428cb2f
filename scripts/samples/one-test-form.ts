import { say } from "../../src/messages/pane-catalogue";
import { SCENARIO } from "./day-of-tests";
import { stored } from "./day-of-tests-sheets";
import { callForOne, quoted, type Argument } from "./formula";
import { addressOf, type SampleCell, type SampleSheet, type Value } from "./sheet";

/** What the form asks for, with the numbers of an example. */
const LINES: readonly (readonly [label: string, value: Value, format?: string])[] = [
  ["Project", SCENARIO.project],
  ["Tested by", "A. Brinnock"],
  ["Date", stored(SCENARIO.date, "day"), "yyyy-mm-dd"],
  ["Sample", "S-04"],
  ["Mix", "Deck LW-40"],
  ["Meter", "M-2"],
  ["Meter last checked", stored("2026-04-20", "day"), "yyyy-mm-dd"],
  ["Low limit (%)", 4.5, "0.00"],
  ["High limit (%)", 7.5, "0.00"],
  ["First reading (%)", 6.5, "0.00"],
  ["Second reading (%)", 6.5, "0.00"],
  ["Third reading (%)", null, "0.00"],
  ["Calibrated cups", 0],
  ["Alcohol (oz)", 48],
  ["Foam (divisions)", 1],
  ["Time to settle (min)", 4],
  ["Packed concrete", "no"],
  ["Leak", "no"],
];
const TITLE_ROWS = 2;

function at(label: string): Argument {
  const line = LINES.findIndex(([each]) => each === label);
  return { text: addressOf(TITLE_ROWS + line, 1), cells: [[LINES[line]![1]]] };
}

/** What the form works out, each by a function of its own that takes the results above it. */
function results(): (readonly [label: string, cell: SampleCell, format?: string])[] {
  const first = TITLE_ROWS + LINES.length;
  const result = (line: number, { v }: SampleCell): Argument => ({
    text: addressOf(first + line, 1),
    cells: [[v]],
  });
  const readings = ["First reading (%)", "Second reading (%)", "Third reading (%)"].map(at);
  const next = callForOne("READING.NEXT", ...readings);
  const final = callForOne("READING.FINAL", ...readings);
  const air = callForOne(
    "AIR",
    result(1, final),
    at("Calibrated cups"),
    at("Alcohol (oz)"),
    quoted("oz"),
  );
  const verdict = callForOne(
    "SPEC.COMPARE",
    result(2, air),
    at("Low limit (%)"),
    at("High limit (%)"),
  );
  return [
    ["Next step", next],
    ["Final reading (%)", final, "0.00"],
    ["Reported air (%)", air, "0.00"],
    ["Verdict", verdict],
  ];
}

function formats(): Map<number, string> {
  const all = [...LINES, ...results()].map(([, , format], i) => [TITLE_ROWS + i, format] as const);
  return new Map(all.flatMap(([row, format]) => (format ? [[row, format]] : [])));
}

/** A form for one test, filled in with an example. */
export function oneTestSheets(): SampleSheet[] {
  const cautions = (["caustic", "flammable", "lifting", "deferral"] as const).map((caution) => ({
    v: say(`caution-${caution}`),
  }));
  const line = ([label, value]: (typeof LINES)[number]) => [
    { v: label },
    value === null ? null : { v: value },
  ];
  return [
    {
      name: "Test form",
      columns: [{ width: 26 }, { width: 52, formatOfRow: formats() }],
      headerRows: 1,
      wrapped: [],
      rows: [
        [{ v: "Volumetric test" }],
        [],
        ...LINES.map(line),
        ...results().map(([label, cell]) => [{ v: label }, cell]),
      ],
    },
    {
      name: "Cautions",
      columns: [{ width: 110 }],
      headerRows: 1,
      wrapped: [0],
      rows: [[{ v: say("pane-cautions") }], ...cautions.map((caution) => [caution])],
    },
  ];
}
