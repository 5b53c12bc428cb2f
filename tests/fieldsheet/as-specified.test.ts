import { findingSentence } from "../../src/fieldsheet/finding-sentence";
import type { CellValue } from "../../src/measure/cell-value";
import { readSetup } from "../../src/reading/setup/setup";
import { checkedTable } from "./checked";

type Cells = readonly (readonly CellValue[])[];

function check(headers: readonly string[], rows: Cells, setup: Cells) {
  const result = checkedTable({ headers, rows }, { setup: readSetup(setup) });
  return {
    ...result,
    said: result.findings.map((finding) => findingSentence(finding, result.columns)),
    rules: result.findings.map(({ rule, record }) => `${rule} ${record}`),
  };
}

/** A sound test: two equal readings of 6, no alcohol (the correction of no alcohol is 0). */
const HEADERS = ["Mix", "First reading", "Second reading", "Alcohol (oz)"];
const sound = (mix: string | null, ...more: CellValue[]): CellValue[] => [mix, 6, 6, 0, ...more];

test("a mix is found in any case and spacing, and each mix has its own limits", () => {
  const { results } = check(
    HEADERS,
    [sound("LW-4"), sound(" lw-4 "), sound("NW-5"), sound("none of them"), sound(null)],
    [
      ["Mix", "Low", "High"],
      ["LW-4", 4.5, 7.5],
      ["nw-5", 3, 5],
    ],
  );
  const verdicts = results.map(({ specification }) => specification);
  expect(verdicts).toEqual(["within", "within", "above", undefined, undefined]);
});

const DENSE = [...HEADERS, "Density (lb/ft³)", "Slump (in)", "Concrete temperature (°F)"];
const SPECIFIED: Cells = [
  [
    "Mix",
    "Density low (lb/ft³)",
    "Density high (lb/ft³)",
    "Slump low (in)",
    "Slump high (in)",
    "Temperature low (°F)",
    "Temperature high (°F)",
  ],
  ["LW-4", 113, 119, 3, 5, 50, 80],
];

test.each<[what: string, density: number, slump: number, temperature: number, rules: string[]]>([
  ["on every limit", 119, 3, 80, []],
  ["too light", 112.9, 4, 70, ["density-outside-specification 0"]],
  ["too wet", 116, 5.25, 70, ["slump-outside-tolerance 0"]],
  ["too stiff", 116, 2.75, 70, ["slump-outside-tolerance 0"]],
  ["too warm", 116, 4, 81, ["concrete-temperature 0"]],
  ["too cold", 116, 4, 49, ["concrete-temperature 0"]],
])(
  "density, slump and temperature are compared with those of the mix: %s",
  (_, density, slump, temperature, rules) => {
    const result = check(DENSE, [sound("LW-4", density, slump, temperature)], SPECIFIED);
    expect(result.rules).toEqual(rules);
    expect(check(DENSE, [sound("LW-5", density, slump, temperature)], SPECIFIED).rules).toEqual([]);
  },
);

test("what a row says itself goes before its mix, and takes nothing of the same quantity from it", () => {
  const headers = [...DENSE, "Specified slump (in)", "High density"];
  const row = (nominal: CellValue, high: CellValue) => [
    ...sound("LW-4", 110, 5.5, 70),
    nominal,
    high,
  ];
  expect(check(headers, [row(null, null)], SPECIFIED).rules).toEqual([
    "density-outside-specification 0",
    "slump-outside-tolerance 0",
  ]);
  // 5 ± 1 1/2 in: from memory, ASTM C94.
  expect(check(headers, [row(5, 120)], SPECIFIED).rules).toEqual([]);
  expect(check(headers, [row("wet", null)], SPECIFIED).rules).toEqual([
    "not-a-number 0",
    "density-outside-specification 0",
  ]);
});

test("the aggregate of the mix decides which method may be used", () => {
  const headers = ["Mix", "Method", "First reading", "Second reading"];
  const rows = [
    ["LW-4", "pressure", 6, 6],
    ["NW-5", "pressure", 6, 6],
  ];
  const setup = [
    ["Mix", "Aggregate"],
    ["LW-4", "expanded shale"],
    ["NW-5", "limestone"],
  ];
  const result = check(headers, rows, setup);
  expect(result.results.map(({ state }) => state)).toEqual(["void", "incomplete"]);
  expect(result.rules).toContain("wrong-method-for-aggregate 0");
});

test("limits in another unit than the sheet's are said once for each mix, and not compared", () => {
  const { said } = check(
    [...HEADERS, "Density (lb/ft³)", "Slump (in)"],
    [sound("LW-4", 116, 4), sound("LW-4", 117, 4)],
    [
      ["Mix", "Density (kg/m³)", "Slump"],
      ["LW-4", "1800-1900", "75-125 mm"],
    ],
  );
  expect(said).toEqual([
    "The density of mix “LW-4” was not compared with the setup: it cannot be told that 116 lb/ft³ in the sheet and 1800 kg/m³, 1900 kg/m³ in the setup are in one unit. Write the unit with both, in the headers or in the cells.",
    "The slump of mix “LW-4” was not compared with the setup: it cannot be told that 4 in in the sheet and 75 mm, 125 mm in the setup are in one unit. Write the unit with both, in the headers or in the cells.",
  ]);
});

test("two lines that say different things of a mix are both set aside and said", () => {
  const { results, said } = check(
    HEADERS,
    [sound("A"), sound("B")],
    [
      ["Mix", "Low", "High"],
      ["A", 4, 7],
      ["B", 4, 7],
      ["a", 5, 8],
    ],
  );
  expect(results.map(({ specification }) => specification)).toEqual([undefined, "within"]);
  expect(said).toEqual([
    expect.stringMatching(/^Setup, line 4: line 2 says something else of mix “a”/),
    expect.stringMatching(/^The setup gives no air limits for mix “A”/),
  ]);
});

test("the end of the scale holds for the whole sheet", () => {
  const rows = [["A", 9.5, 9.5, 0]];
  const scale = (end: number) => [
    ["Setting", "Value"],
    ["End of the scale", end],
  ];
  expect(check(HEADERS, rows, scale(9)).rules).toEqual(["beyond-scale 0", "beyond-scale 0"]);
  expect(check(HEADERS, rows, scale(10))).toMatchObject({ rules: [], results: [{ air: 9.5 }] });
});

test("an edition of the setting holds where neither row nor mix sets a limit (C94: 90 min until 2021, trade news)", () => {
  const headers = [...HEADERS, "Time batched", "Time discharged"];
  const setup = [
    ["Mix", "Time allowed for discharge (min)", null, "Setting", "Value"],
    ["LW-4", 120, null, "Edition", "ASTM C94-16"],
  ];
  const rows = [sound("LW-4", "8:00", "9:50"), sound("NW-5", "8:00", "9:50")];
  expect(check(headers, rows, setup).rules).toEqual(["discharged-late 1"]);
});

test("dates are counted from the year that the setting says", () => {
  const headers = ["Date", "Meter checked", ...HEADERS];
  // 2026-06-09 is day 46182 counted from 1900 and 44720 counted from 1904 (1,462 days apart).
  const rows = [[44720, "2026-06-01", ...sound("A")]];
  const setup = (from: number) => [
    ["Setting", "Value"],
    ["Days counted from", from],
  ];
  expect(check(headers, rows, setup(1904)).results[0]!.values.date).toBe(46182);
  expect(check(headers, rows, setup(1900)).results[0]!.values.date).toBe(44720);
});
