import { call, callForOne, type Argument } from "../formula";
import { addressOf, type SampleCell, type SampleSheet, type Value } from "../sheet";
import {
  CASES,
  CYLINDERS,
  MOST_INPUTS,
  SPECIFIED_STRENGTH,
  STRENGTH_TESTS,
  type Case,
} from "./cases";

const FIRST_INPUT = 1;
const OURS = FIRST_INPUT + MOST_INPUTS;
const [ORDINARY, MATCH] = [OURS + 1, OURS + 2];

/** Rows over the first case: the verdict, and the headers. */
const HEADER_ROWS = 2;
const MATCHES = "match";
/** The verdict on a result that is not the same both ways. */
export const DIFFERS = "DIFFERS";

/** An ordinary formula. Its result is filled in by whoever calculates the sheet. */
const formula = (f: string): SampleCell => ({ f, v: null });
const plain = (v: Value): SampleCell | null => (v === null ? null : { v });

/**
 * Two numbers match to nine places of the larger of them and 1; two texts match letter by letter. The
 * difference is rounded, because the workbench's spreadsheet misreads numbers below a millionth.
 */
function match(ours: string, ordinary: string): SampleCell {
  const near = `ROUND((${ours}-${ordinary})/MAX(1,ABS(${ordinary})),9)=0`;
  return formula(
    `=IF(IF(ISNUMBER(${ours}),${near},${ours}=${ordinary}),"${MATCHES}","${DIFFERS}")`,
  );
}

/** "10 of 10 match", from the column of matches. */
function verdict(column: number, rows: number): SampleCell {
  const cells = `${addressOf(HEADER_ROWS, column)}:${addressOf(HEADER_ROWS + rows - 1, column)}`;
  return formula(`=COUNTIF(${cells},"${MATCHES}")&" of "&ROWS(${cells})&" match"`);
}

function caseRow([name, inputs, ordinary]: Case, row: number): (SampleCell | null)[] {
  const places = inputs.map((_, i) => addressOf(row, FIRST_INPUT + i));
  const args = places.map((text, i): Argument => ({ text, cells: [[inputs[i]!]] }));
  const letter = (_: string, which: string) => addressOf(row, FIRST_INPUT + "abcde".indexOf(which));
  const filled = ordinary.replace(/\{([a-e])\}/g, letter);
  return [
    { v: `FRESH.${name}` },
    ...Array.from({ length: MOST_INPUTS }, (_, i) => plain(inputs[i] ?? null)),
    callForOne(name, ...args),
    formula(`=${filled}`),
    match(addressOf(row, OURS), addressOf(row, ORDINARY)),
    { v: filled },
  ];
}

function oneByOne(): SampleSheet {
  const inputs = Array.from({ length: MOST_INPUTS }, (_, i) => ({ v: `Input ${i + 1}` }));
  const headers = [
    "Function",
    "By the function",
    "By an ordinary formula",
    "Verdict",
    "The formula",
  ];
  const [name, ...results] = headers.map((v) => ({ v }));
  return {
    name: "Functions",
    columns: [27, ...inputs.map(() => 12), 16, 22, 10, 90].map((width) => ({ width })),
    headerRows: HEADER_ROWS,
    wrapped: [],
    rows: [
      [verdict(MATCH, CASES.length)],
      [name!, ...inputs, ...results],
      ...CASES.map((each, i) => caseRow(each, HEADER_ROWS + i)),
    ],
  };
}

function strength(): SampleSheet {
  const last = HEADER_ROWS + STRENGTH_TESTS.length;
  const accepted = call(
    "STRENGTH.ACCEPT",
    { text: `A${HEADER_ROWS + 1}:A${last}`, cells: STRENGTH_TESTS.map((test) => [test]) },
    { text: `B${HEADER_ROWS + 1}`, cells: [[SPECIFIED_STRENGTH]] },
  );
  const rows = STRENGTH_TESTS.map((test, i) => {
    const row = HEADER_ROWS + i + 1;
    const single = `A${row}<B${row}-500`;
    const mean = i < 2 ? "FALSE" : `AVERAGE(A${row - 2}:A${row})<B${row}`;
    const both = '"single test and mean of three too low"';
    const said = `IF(AND(${single},${mean}),${both},IF(${single},"single test too low",IF(${mean},"mean of three too low","accepted")))`;
    return [
      { v: test },
      { v: SPECIFIED_STRENGTH },
      accepted[i]![0]!,
      formula(`=${said}`),
      match(`C${row}`, `D${row}`),
      { v: said },
    ];
  });
  return {
    name: "Strength tests",
    columns: [12, 12, 38, 38, 10, 90].map((width) => ({ width })),
    headerRows: HEADER_ROWS,
    wrapped: [],
    rows: [
      [verdict(4, rows.length)],
      [
        "Test, psi",
        "Specified",
        "FRESH.STRENGTH.ACCEPT",
        "By an ordinary formula",
        "Verdict",
        "The formula",
      ].map((v) => ({ v })),
      ...rows,
    ],
  };
}

function cylinders(): SampleSheet {
  const last = HEADER_ROWS + CYLINDERS.length;
  const ours = callForOne("STRENGTH.WITHINTEST", {
    text: `A${HEADER_ROWS + 1}:C${last}`,
    cells: CYLINDERS,
  });
  const ordinary = `AVERAGE(D${HEADER_ROWS + 1}:D${last})/1.693`;
  const first = `${HEADER_ROWS + 1}`;
  return {
    name: "Cylinders",
    columns: [12, 12, 12, 10, 24, 22, 10, 40].map((width) => ({ width })),
    headerRows: HEADER_ROWS,
    wrapped: [],
    rows: [
      [verdict(6, 1)],
      [
        "Cylinder 1",
        "Cylinder 2",
        "Cylinder 3",
        "Range",
        "FRESH.STRENGTH.WITHINTEST",
        "By an ordinary formula",
        "Verdict",
        "The formula",
      ].map((v) => ({ v })),
      ...CYLINDERS.map((test, i) => {
        const row = HEADER_ROWS + i + 1;
        const range = formula(`=MAX(A${row}:C${row})-MIN(A${row}:C${row})`);
        const judged = [
          ours,
          formula(`=${ordinary}`),
          match(`E${first}`, `F${first}`),
          { v: ordinary },
        ];
        return [...test.map((v) => ({ v })), range, ...(i === 0 ? judged : [])];
      }),
    ],
  };
}

/** A workbook that judges itself: each function beside ordinary formulas for the same result. */
export function verificationSheets(): SampleSheet[] {
  return [oneByOne(), strength(), cylinders()];
}
