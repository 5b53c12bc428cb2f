import type { SheetTable } from "../../src/reading/sheet-table";
import { PERCENT } from "./plain-method";
import type { Layout, PlainTest } from "./plain-test";
import { Random } from "./random";

type Cell = string | number | null;

/** One column: its header and what stands in it for a test. */
type Column = readonly [header: string, cell: (test: PlainTest, i: number) => Cell];

const percent = (thousandths: number) => thousandths / PERCENT;

/** A field sheet as a lab writes it, one row a test. */
export function sheetOf(tests: readonly PlainTest[], layout: Layout, random: Random): SheetTable {
  const columns = [...plainColumns(layout), ...(layout.isFull ? fullColumns(random) : [])];
  return {
    headers: columns.map(([header]) => header),
    rows: tests.map((test, i) => columns.map(([, cell]) => cell(test, i))),
  };
}

function plainColumns({ unit, unitInCell, hasFinal, hasFactor }: Layout): Column[] {
  const alcohol: Column = unitInCell
    ? ["Alcohol", ({ amount }) => `${amount} ${unit}`]
    : [`Alcohol (${unit})`, ({ amount }) => amount];
  return [
    ["Sample", (_, i) => `S-${i + 1}`],
    ["First reading (%)", ({ readings }) => percent(readings[0]!)],
    ["Second reading (%)", ({ readings }) => percent(readings[1]!)],
    [
      "Third reading (%)",
      ({ readings }) => (readings[2] === undefined ? null : percent(readings[2])),
    ],
    ...(hasFinal
      ? [["Final reading (%)", ({ recordedFinal }) => hundredths(recordedFinal)] satisfies Column]
      : []),
    ["Cups", ({ cups }) => (cups === 0 ? null : cups)],
    alcohol,
    ...(hasFactor
      ? [["Aggregate correction factor", ({ factor }) => percent(factor)] satisfies Column]
      : []),
    ["Reported air (%)", ({ reported }) => percent(reported)],
  ];
}

/** What a careful lab records besides, all of it as the method asks. */
function fullColumns(random: Random): Column[] {
  const day = random.whole(45_000, 46_500);
  return [
    ["Date", () => day],
    ["Sampled from", (_, i) => clock(420 + 15 * i)],
    ["Sampled to", (_, i) => clock(420 + 15 * i + random.whole(10, 15))],
    ["Test start", (_, i) => clock(435 + 15 * i)],
    ["Method", () => random.one(["C173", "volumetric", "ASTM C173/C173M"])],
    ["Aggregate", () => random.one(["expanded shale", "crushed limestone", "slag"])],
    ["Aggregate size (in)", () => random.one(["3/4", "1/2", 1, 1.5])],
    ["Water before alcohol (pt)", () => random.one([1, 1.5, 2])],
    ["Alcohol after zeroing", () => random.one(["no", null, 0])],
    ["Inversion time (s)", () => random.whole(45, 90)],
    ["Longest inversion (s)", () => random.whole(2, 5)],
    ["Rolling time (s)", () => random.whole(60, 75)],
    ["Foam", () => random.whole(0, 8) / 4],
    ["Time to settle (min)", () => random.whole(4, 12) / 2],
    ["Packed concrete", () => "no"],
    ["Leak", () => "none"],
    ["Meter", () => "M-3"],
    ["Meter checked", () => day - random.whole(1, 364)],
  ];
}

/** People write a final reading to the hundredth at most; a half is rounded up. */
function hundredths(thousandths: number): number {
  return Math.round(thousandths / 10) / 100;
}

function clock(minute: number): string {
  const [hours, minutes] = [Math.floor(minute / 60) % 24, minute % 60];
  return `${hours}:${String(minutes).padStart(2, "0")}`;
}
