import type { CellValue } from "../../../src/measure/cell-value";

/** A sheet with rows that are no tests above, between or below, and the rows that are tests. */
export interface TailCase {
  readonly name: string;
  readonly table: readonly (readonly CellValue[])[];
  /** Indexes of the rows of the table, from 0, that are tests. */
  readonly testRows: readonly number[];
  readonly heldOut: boolean;
}

/** A row of a sheet; tests are marked so that their indexes need no counting. */
type Line = readonly [kind: "test" | "other", ...cells: CellValue[]];

/** Turns marked lines into a sheet whose rows are all as long as the longest. */
function tail(name: string, lines: readonly Line[], heldOut = false): TailCase {
  const width = Math.max(...lines.map(([, ...cells]) => cells.length));
  return {
    name,
    table: lines.map(([, ...cells]) => Array.from({ length: width }, (_, at) => cells[at] ?? null)),
    testRows: lines.flatMap(([kind], at) => (kind === "test" ? [at] : [])),
    heldOut,
  };
}

/** Sheets with titles, totals, means, remarks, signatures and repeated headers. All invented. */
export const TAILS: readonly TailCase[] = [
  tail("mean and count below", [
    ["other", "Sample", "Reading 1", "Reading 2", "Alcohol (pt)", "Air (%)"],
    ["test", "A1", 6, 6, 2, 6],
    ["test", "A2", 6.25, 6.5, 2, 6.5],
    ["test", "A3", 5.5, 5.5, 1.5, 5.5],
    ["other", "Average", "", "", "", 6],
    ["other", "Count", "", "", "", 3],
  ]),
  tail("totals of alcohol and cups", [
    ["other", "Ticket", "First", "Second", "Alcohol, pt", "Cups"],
    ["test", 701, 8.5, 8.5, 3, 2],
    ["test", 702, 8, 8.25, 3, 1],
    ["other", "Total", null, null, 6, 3],
  ]),
  tail("label of the mean not in the first column", [
    ["other", "No.", "Ticket", "Reading 1 (%)", "Reading 2 (%)", "Alcohol (pt)", "Air (%)"],
    ["test", 1, 4001, 6, 6, 2, 6],
    ["test", 2, 4009, 6.5, 6.5, 2, 6.5],
    ["other", "", "", "", "", "Mean", 6.25],
    ["other", "", "", "", "", "Std dev", 0.35],
    ["other", "", "", "", "", "Range", 0.5],
  ]),
  tail("titles above", [
    ["other", "Harrow Deck Co. – Volumetric air, roller meter"],
    ["other", "Project:", "Ferry Rd. bridge", "", "Week of", 46120],
    ["other"],
    ["other", "Date", "Ticket", "Reading 1", "Reading 2", "Alcohol (oz)", "Air (%)"],
    ["test", 46120, 881204, 5.5, 5.75, 24, 5.75],
    ["test", 46121, 881209, 6, 6, 32, 6],
  ]),
  tail("header repeated on each printed page", [
    ["other", "Sample", "Rdg 1", "Rdg 2", "Alc (pt)", "Air %"],
    ["test", "P1", 6, 6, 2, 6],
    ["test", "P2", 6, 6.25, 2, 6.25],
    ["other", "Sample", "Rdg 1", "Rdg 2", "Alc (pt)", "Air %"],
    ["test", "P3", 7, 7, 3, 6.75],
    ["test", "P4", 5, 5, 1, 5],
  ]),
  tail("signature and remarks below", [
    ["other", "Sample", "Reading 1", "Reading 2", "Alcohol (pt)"],
    ["test", "S1", 6, 6.25, 2],
    ["test", "S2", 5.75, 5.75, 2],
    ["other"],
    ["other", "Remarks: second load held 20 min at gate"],
    ["other", "Tested by: R. Talcott", "", "Date: 5/4/2026"],
    ["other", "Signature", "", "", ""],
  ]),
  tail("days as rows between", [
    ["other", "Ticket", "Time", "First reading", "Second reading", "Alcohol (pt)"],
    ["other", "Monday 4 May"],
    ["test", 6601, 0.34375, 6, 6, 2],
    ["test", 6604, 0.416666666666667, 6.25, 6.25, 2],
    ["other", "Tuesday 5 May"],
    ["test", 6620, 0.354166666666667, 5.5, 5.75, 2],
  ]),
  tail("row of units below the header", [
    ["other", "Sample", "First reading", "Second reading", "Alcohol", "Slump", "Air"],
    ["other", "", "%", "%", "pt", "in", "%"],
    ["test", "U1", 6, 6, 2, 4, 6],
    ["test", "U2", 6.5, 6.75, 2, 4.25, 6.75],
  ]),
  tail("row of specified values below the header", [
    ["other", "Sample", "Reading 1", "Reading 2", "Alcohol (pt)", "Air (%)", "Slump (in)"],
    ["other", "Spec.", "", "", "", "4.5-7.5", "3-5"],
    ["test", "Q1", 6, 6, 2, 6, 4],
    ["test", "Q2", 7, 7, 3, 6.75, 4.5],
  ]),
  tail("blank rows between loads and a total of yards", [
    ["other", "Ticket", "CY", "Rdg 1", "Rdg 2", "Alcohol pt", "Air %"],
    ["test", 50, 9, 6, 6, 2, 6],
    ["other"],
    ["test", 54, 9, 6.25, 6.25, 2, 6.25],
    ["other"],
    ["other", "Total CY", 18],
  ]),
  tail("a second table of cylinders below", [
    ["other", "Sample", "Reading 1", "Reading 2", "Alcohol (pt)", "Air (%)"],
    ["test", "B1", 6, 6, 2, 6],
    ["test", "B2", 5.5, 5.5, 2, 5.5],
    ["other"],
    ["other", "Cylinder", "Age (d)", "Load (lb)", "Strength (psi)", "Break type"],
    ["other", "C-1", 28, 55980, 4455, 3],
    ["other", "C-2", 28, 57120, 4546, 2],
  ]),
  tail("legend and caution at the foot", [
    ["other", "Load", "Initial", "Check", "Alcohol (pt)", "Leak"],
    ["test", 3, 6, 6, 2, "N"],
    ["test", 9, 6.25, 6.5, 2, "N"],
    ["other", "* N = no, Y = yes"],
    ["other", "Alcohol is flammable: keep sparks away."],
  ]),
  tail("Spanish mean and signatures", [
    ["other", "Muestra", "Lectura 1", "Lectura 2", "Alcohol (L)", "Aire (%)"],
    ["test", "M1", 6, 6, 0.9, 6],
    ["test", "M2", 6.5, 6.5, 0.9, 6.5],
    ["other", "Promedio", "", "", "", 6.25],
    ["other", "Desv. est.", "", "", "", 0.35],
    ["other", "Elaboró: E. Barragán", "", "Revisó: G. Tello"],
  ]),
  tail("French mean and remarks", [
    ["other", "Échantillon", "1re lecture", "2e lecture", "Alcool (L)", "Air (%)"],
    ["test", "E1", 6, 6, 0.9, 6],
    ["test", "E2", 5.5, 5.75, 0.7, 5.75],
    ["other", "Moyenne", "", "", "", 5.875],
    ["other", "Écart type", "", "", "", 0.18],
    ["other", "Observations : pluie à 11 h"],
  ]),
  tail("German mean and signature", [
    ["other", "Probe", "1. Ablesung", "2. Ablesung", "Alkohol (l)", "Luftgehalt (%)"],
    ["test", "P1", 6, 6, 0.9, 6],
    ["test", "P2", 6.25, 6.25, 0.9, 6.25],
    ["other", "Mittelwert", "", "", "", 6.125],
    ["other", "Anzahl", "", "", "", 2],
    ["other", "Unterschrift Prüfer:"],
  ]),
  tail(
    "grand mean with an abbreviation",
    [
      ["other", "Tkt", "Rdg 1", "Rdg 2", "Alc pt", "Air"],
      ["test", 11, 6, 6, 2, 6],
      ["test", 14, 6.5, 6.75, 2, 6.75],
      ["other", "Avg.", 6.25, 6.375, 2, 6.375],
      ["other", "n =", 2, 2, 2, 2],
      ["other", "Max", 6.5, 6.75, 2, 6.75],
      ["other", "Min", 6, 6, 2, 6],
    ],
    true,
  ),
  tail(
    "subtotals a lot and a repeated header",
    [
      ["other", "Sublot", "Reading 1", "Reading 2", "Alcohol (oz)", "Air (%)"],
      ["test", "1-1", 6, 6, 32, 6],
      ["test", "1-2", 6.25, 6.25, 32, 6.25],
      ["other", "Lot 1 average", "", "", "", 6.125],
      ["other", "Sublot", "Reading 1", "Reading 2", "Alcohol (oz)", "Air (%)"],
      ["test", "2-1", 5.5, 5.5, 24, 5.5],
      ["test", "2-2", 5.75, 6, 24, 6],
      ["other", "Lot 2 average", "", "", "", 5.75],
    ],
    true,
  ),
  tail(
    "title rows with a date and a number in them",
    [
      ["other", "REPORT 14", "", "", "", ""],
      ["other", "Date", "5/4/2026", "Mix", "SLW-3", ""],
      ["other", "Truck", "1st", "2nd", "Alcohol pt", "Result %"],
      ["test", 8, 6, 6, 2, 6],
      ["test", 15, 7, 7.25, 3, 7],
      ["other", "Checked", "T. Moss"],
    ],
    true,
  ),
  tail(
    "lines of words at the foot",
    [
      ["other", "Ticket", "Reading 1", "Reading 2", "Alcohol (pt)", "Air (%)", "Remarks"],
      ["test", 901, 6, 6, 2, 6, ""],
      ["test", 902, 6.25, 6.25, 2, 6.25, "windy"],
      ["other", "No further tests today"],
      ["other", "End of sheet"],
    ],
    true,
  ),
  tail(
    "required values at the foot",
    [
      ["other", "Sample", "Initial reading", "Second reading", "Alcohol (mL)", "Air (%)"],
      ["test", "K1", 6, 6, 900, 6],
      ["test", "K2", 5.5, 5.5, 700, 5.5],
      ["other", "Spec min", "", "", "", 4.5],
      ["other", "Spec max", "", "", "", 7.5],
      ["other", "Within?", "", "", "", "yes"],
    ],
    true,
  ),
  tail(
    "Spanish total and note",
    [
      ["other", "Remisión", "1a. lectura", "2a. lectura", "Alcohol (ml)", "Aire (%)"],
      ["test", 40112, 6, 6.25, 900, 6.25],
      ["test", 40115, 5.5, 5.5, 700, 5.5],
      ["other", "Media", "", "", "", 5.875],
      ["other", "Nota: lluvia a las 11 h"],
      ["other", "Firma"],
    ],
    true,
  ),
  tail(
    "German total and repeated header",
    [
      ["other", "Lieferschein", "Ablesung 1", "Ablesung 2", "Alkohol (ml)", "Luftgehalt (%)"],
      ["test", 2201, 6, 6, 900, 6],
      ["other", "Lieferschein", "Ablesung 1", "Ablesung 2", "Alkohol (ml)", "Luftgehalt (%)"],
      ["test", 2204, 6.5, 6.5, 900, 6.5],
      ["other", "Mittel", "", "", "", 6.25],
      ["other", "Summe", "", "", 1800, ""],
    ],
    true,
  ),
];
