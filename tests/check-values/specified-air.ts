/** A table of a code as it is printed: what the columns are, and a row of air contents each exposure. */
export interface PrintedTable {
  readonly name: string;
  readonly source: string;
  readonly sizes: readonly unknown[];
  readonly rows: readonly (readonly [exposure: string, ...air: number[]])[];
}

const AMERICAN = ["3/8", "1/2", "3/4", "1", "1 1/2", "2", "3"];
const MODERATE: number[] = [6, 5.5, 5, 4.5, 4.5, 4, 3.5];
const SEVERE: number[] = [7.5, 7, 6, 6, 5.5, 5, 4.5];
const FIVE_COPIES = "from memory, ACI 211.1; read alike in five copies";

export const PRINTED_TABLES: readonly PrintedTable[] = [
  {
    name: "ACI 318-19",
    source: "ACI 318-19 Table 19.3.3.1, two copies that agree",
    sizes: AMERICAN,
    rows: [
      ["F1", ...MODERATE],
      ["F2", ...SEVERE],
      ["F3", ...SEVERE],
    ],
  },
  {
    name: "ACI 211.1",
    source: FIVE_COPIES,
    sizes: AMERICAN,
    rows: [
      ["moderate", ...MODERATE],
      ["severe", ...SEVERE],
    ],
  },
  {
    name: "ACI 211.1",
    source: "Adv. Civ. Eng. 2018, 4398017, Table 3: air without admixture",
    sizes: [...AMERICAN, "6 in"],
    rows: [["none", 3, 2.5, 2, 1.5, 1, 0.5, 0.3, 0.2]],
  },
  {
    name: "CSA A23.1",
    source: "from memory, CSA A23.1 Table 4: middle of the range",
    sizes: ["10 mm", "14 mm", "20 mm", "28 mm", "40 mm"],
    rows: [
      ["category 1", (6 + 9) / 2, (5 + 8) / 2, (5 + 8) / 2, (4 + 7) / 2, (4 + 7) / 2],
      ["2", (5 + 8) / 2, (4 + 7) / 2, (4 + 7) / 2, (3 + 6) / 2, (3 + 6) / 2],
    ],
  },
  {
    name: "EN 206",
    source: "from memory, EN 206 Table F.1",
    sizes: [null, "16 mm"],
    rows: [
      ["XF2", 4, 4],
      ["XF3", 4, 4],
      ["XF4", 4, 4],
    ],
  },
  {
    name: "DIN 1045-2",
    source: "two German trade pages on DIN 1045-2: least mean air",
    sizes: ["8 mm", "16 mm", "32 mm", "63 mm"],
    rows: [
      ["XF2", 5.5, 4.5, 4, 3.5],
      ["XF3", 5.5, 4.5, 4, 3.5],
      ["XF4", 5.5, 4.5, 4, 3.5],
    ],
  },
  {
    name: "UFC 3-250-04FA",
    source: "US Army and Air Force, UFC 3-250-04FA, paving",
    sizes: [null, 1],
    rows: [
      ["frost", 6, 6],
      ["no frost", 5, 5],
    ],
  },
];

const CLAUSE =
  "ACI 318-19, trade question and answer: 1.0 lower where f′c is over 5,000 psi (35 MPa)";

/** aggregate, exposure, strength, source, units; air */
export const WORKED_SPECIFICATIONS: readonly [readonly unknown[], number, string][] = [
  [[0.75, "F3", 5500], 5, `${CLAUSE}: 6.0 − 1.0`],
  [["3/4 in", "F1", 5000], 5, `${CLAUSE}: exactly 5,000 is not over`],
  [["1 1/2", "f2", 6000, "aci 318-19"], 4.5, `${CLAUSE}: 5.5 − 1.0`],
  [["19 mm", "F2", 40, null, "si"], 5, `${CLAUSE}: 6.0 − 1.0`],
  [[25, "F1", 35, "ACI 318-19", "si"], 4.5, `${CLAUSE}: exactly 35 is not over`],
  [["3/8 in", "severe", 6000, "ACI 211.1"], 7.5, `${FIVE_COPIES}: says nothing of strength`],
];
