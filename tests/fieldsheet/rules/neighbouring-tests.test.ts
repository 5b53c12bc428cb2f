import { checkTable } from "../../../src/fieldsheet/check-table";
import { findingSentence } from "../../../src/fieldsheet/finding-sentence";
import type { CellValue } from "../../../src/measure/cell-value";

/** One row: what is said of it by a rule, where a valid air test of 6.00 % stands beside. */
function said(rule: string, record: Readonly<Record<string, CellValue>>): string[] {
  return saidOf(rule, [record]);
}

function saidOf(rule: string, records: readonly Readonly<Record<string, CellValue>>[]): string[] {
  const air = { "First reading": 6, "Second reading": 6, "Alcohol (oz)": 16 };
  const headers = Object.keys({ ...air, ...records[0]! });
  const rows = records.map((record) => {
    const row: Record<string, CellValue> = { ...air, ...record };
    return headers.map((header) => row[header] ?? null);
  });
  const result = checkTable({ headers, rows });
  return result.findings
    .filter((finding) => finding.rule === rule)
    .map((finding) => findingSentence(finding, result.columns));
}

type Row = readonly [
  record: Readonly<Record<string, CellValue>>,
  said: RegExp | null,
  source: string,
];

function checkRule(rule: string, rows: readonly Row[]): void {
  describe(rule, () => {
    test.each(rows)("%j: %s (%s)", (record, sentence) => {
      const sentences = said(rule, record);
      if (sentence === null) expect(sentences).toEqual([]);
      else {
        expect(sentences).toHaveLength(1);
        expect(sentences[0]).toMatch(sentence);
      }
    });
  });
}

const USUAL = "±3 lb/ft³, common practice";
const PAIR = "±50 kg/m³, our own pair";
checkRule("density-outside-specification", [
  [{ Density: 118, "Specified density": 115 }, null, `${USUAL}: on the limit is within`],
  [
    { Density: 118.2, "Specified density": 115 },
    /Density: .*118.2 lb\/ft³, is above the 118 /,
    USUAL,
  ],
  [{ Density: 111.5, "Specified density": 115 }, /is below the 112 lb\/ft³ specified/, USUAL],
  [{ "Density (kg/m³)": 1901, "Specified density": 1850 }, /above the 1900 kg\/m³/, PAIR],
  [{ Density: 1895, "Target density": 1850 }, null, PAIR],
  [{ Density: 121, "Max density": 120 }, /is above the 120 lb\/ft³/, "limits of the sheet"],
  [{ Density: 119, "Min density": 110, "Max density": 120 }, null, "limits of the sheet"],
  [{ Density: 1850, "Specified density": 115 }, null, "two systems are not compared"],
  [{ Density: null, "Specified density": 115 }, null, "a blank is not a zero"],
]);

const C94 = "from memory, ASTM C94";
checkRule("slump-outside-tolerance", [
  [{ "Slump (in)": 2.5, "Specified slump": 2 }, null, `${C94}: 2 ± 1/2`],
  [
    { "Slump (in)": 2.75, "Specified slump": 2 },
    /Slump.*2.75 in .* 2 in specified; 1.5 to 2.5/,
    C94,
  ],
  [{ "Slump (in)": 5, "Specified slump": 4 }, null, `${C94}: 4 ± 1`],
  [{ "Slump (in)": 5.25, "Specified slump": 4 }, /3 to 5 in are allowed/, C94],
  [{ "Slump (in)": "3 1/4", "Specified slump": 5 }, /3.5 to 6.5 in/, `${C94}: 5 ± 1 1/2`],
  [{ Slump: "6 1/2 in", "Nominal slump": "5 in" }, null, C94],
  [{ "Slump (mm)": 65, "Target slump (mm)": 50 }, null, `${C94}: 50 ± 15 mm`],
  [{ "Slump (mm)": 126, "Target slump (mm)": 100 }, /75 to 125 mm/, `${C94}: 100 ± 25 mm`],
  [{ Slump: 105, "Target slump": 150 }, /110 to 190 mm/, `${C94}: 150 ± 40 mm`],
  [{ "Slump (mm)": 100, "Specified slump (in)": 4 }, null, "two systems are not compared"],
]);

const HOT = "from memory, ACI 305.1: 95 °F, 35 °C";
const COLD = "from memory, ASTM C94: 40 °F, 5 °C";
checkRule("concrete-temperature", [
  [{ "Concrete temp (°F)": 95 }, null, HOT],
  [
    { "Concrete temp (°F)": 96 },
    /Concrete temp.*: the concrete, at 96 °F, is warmer than 95 °F/,
    HOT,
  ],
  [{ "Concrete temperature": "36 °C" }, /at 36 °C, is warmer than 35 °C/, HOT],
  [{ "Concrete temperature (C)": 4 }, /at 4 °C, is colder than 5 °C/, COLD],
  [{ "Concrete temp (°F)": 39 }, /is colder than 40 °F/, COLD],
  [
    { "Concrete temp (°F)": 88, "Max concrete temp": 85 },
    /warmer than 85 °F/,
    "limit of the sheet",
  ],
  [{ "Concrete temperature": 72 }, null, "can only be °F, and is right"],
  [{ "Concrete temperature": 50 }, null, "may be °F or °C, so nothing is said"],
]);

const C138 = "from memory, ASTM C138 Table 1";
checkRule("measure-too-small", [
  [{ "Measure volume (ft³)": 0.25, "Aggregate size": "1 in" }, null, C138],
  [
    { "Measure volume (ft³)": 0.25, "Aggregate size": "1 1/2 in" },
    /at least 0.4 ft³ \(11 L\)/,
    C138,
  ],
  [{ "Measure volume": "7 L", "Aggregate size": "25 mm" }, null, C138],
  [{ "Measure volume": 7, "Aggregate size": "37.5 mm" }, /aggregate of 37.5 mm .*0.4 ft³/, C138],
  [{ "Measure volume (L)": 5.67, "Aggregate size": "3/4 in" }, null, `${C138}: 5.66 L is 0.2 ft³`],
  [{ "Measure volume (m³)": 0.014, "Aggregate size": "50 mm" }, null, C138],
]);

const CUP = "from memory, ASTM C173 apparatus: 1.00 ± 0.04 %";
checkRule("cup-out-of-tolerance", [
  [{ "Cup volume (mL)": 21.24, "Bowl volume (ft³)": 0.075 }, null, CUP],
  [{ "Cup volume (mL)": 22.09, "Bowl volume (ft³)": 0.075 }, /holds 1.04\d? % .*0.96 to 1.04/, CUP],
  [{ "Cup volume (mL)": 22.08, "Bowl volume (L)": 2.1238 }, null, CUP],
  [{ "Cup volume": 20, "Bowl volume": 2124 }, /holds 0.942 %/, CUP],
]);
const TR202 = "Louisiana DOTD TR 202 (2008): 0.075 ft³";
checkRule("bowl-too-small", [
  [{ "Bowl volume (ft³)": 0.075 }, null, TR202],
  [{ "Bowl volume (L)": 2.124 }, null, TR202],
  [{ "Bowl volume (ft³)": 0.0749 }, /a bowl of 0.0749 ft³ is smaller than the 0.075 ft³/, TR202],
  [{ "Bowl volume": "2.08 L" }, /a bowl of 0.0735 ft³/, TR202],
]);

test("a cup or a bowl is told once, however many tests rest on it (our own rule)", () => {
  const record = { "Cup volume (mL)": 20, "Bowl volume (ft³)": 0.074 };
  expect(saidOf("cup-out-of-tolerance", [record, record, record])).toHaveLength(1);
  expect(saidOf("bowl-too-small", [record, record, record])).toHaveLength(1);
});

const CARE = "retarder literature: care from 0.20 lb/ft²/h, 1.0 kg/m²/h";
const weather = (units: [string, string], c: number, a: number, rh: number, wind: number) => ({
  [`Concrete temp (${units[0]})`]: c,
  [`Air temp (${units[0]})`]: a,
  "Relative humidity (%)": rh,
  [`Wind (${units[1]})`]: wind,
});
checkRule("evaporation-high", [
  [weather(["°F", "mph"], 87, 80, 50, 12), /: 0.24 lb\/ft²\/h .* from 0.2 lb/, `${CARE}; 0.2435`],
  [weather(["°F", "mph"], 80, 80, 50, 10), null, `${CARE}; 0.1431`],
  [weather(["°C", "km/h"], 35, 32, 25, 24), /: 2.35 kg\/m²\/h/, `${CARE}; 2.3453`],
  [weather(["°C", "km/h"], 30, 30, 50, 16), null, `${CARE}; 0.8333`],
  [weather(["°F", "km/h"], 87, 80, 50, 12), null, "two systems are not mixed"],
]);

const KT18 = "Kansas DOT KT-18";
checkRule("pressure-check-due", [
  [
    { Method: "Pressure", "Aggregate correction factor": 0.8 },
    /factor of 0.8 %, 0.8 % or more/,
    KT18,
  ],
  [{ Method: "C231", "Aggregate correction factor": 0.7 }, null, KT18],
  [{ Method: "C231", "Slump (in)": 2 }, /Slump.*a slump of 2 in/, KT18],
  [{ Method: "C231", "Slump (in)": 3 }, null, KT18],
  [{ Method: "C231", "Slump (mm)": 45 }, /a slump of 45 mm/, `${KT18}; our own pair`],
  [
    { Method: "C173", "Aggregate correction factor": 0.9 },
    null,
    "the volumetric method needs none",
  ],
  [
    { Method: "C231", Aggregate: "lightweight", "Aggregate correction factor": 0.9 },
    null,
    "one cause, told by wrong-method-for-aggregate",
  ],
]);

checkRule("discharged-late", [
  [{ Batched: "10:00", Discharged: "11:30" }, null, `${C94}: 90 min`],
  [{ Batched: "10:00", Discharged: "11:31" }, /Discharged: .*91 minutes .* 90 are allowed/, C94],
  [{ Batched: "23:30", Discharged: "01:05" }, /95 minutes/, `${C94}, past midnight`],
  [
    { Batched: "10:00", Discharged: "11:50", "Discharge limit (min)": 120 },
    null,
    "limit of the sheet",
  ],
  [
    { Batched: "10:00", Discharged: "11:10", "Discharge limit": 60 },
    /60 are/,
    "limit of the sheet",
  ],
]);

const SIDE = "our own reading of yield and density";
checkRule("methods-disagree", [
  [
    { "Gravimetric air": 9, "Relative yield": 1.04 },
    /to the same side .* look first at the tare/,
    SIDE,
  ],
  [{ "Gravimetric air": 3, "Relative yield": 0.96 }, /to the same side/, SIDE],
  [
    { "Gravimetric air": 9, "Relative yield": 0.96 },
    /other side: look first at the batch masses/,
    SIDE,
  ],
  [{ "Gravimetric air": 9, "Relative yield": 1.01 }, /near 1 .* readings of the meter/, SIDE],
  [
    { "Gravimetric air": 9 },
    /^Gravimetric air: the density gives 9 % of air and the meter 6 %/,
    SIDE,
  ],
  [{ "Gravimetric air": 7, "Relative yield": 1.04 }, null, "1.0 % apart is agreement"],
]);
