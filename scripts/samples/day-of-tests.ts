/**
 * One day of volumetric air tests on the deck of a bridge, as testers wrote it down. The bridge, the
 * people and the companies are invented, and so is every number.
 *
 * Some tests are sound, some void, some reported wrongly and some at a limit, so that there is much
 * to find. `tests/samples/day-of-tests.test.ts` says what each row is meant to show.
 */
export const SCENARIO = {
  project: "Wexley Ford bridge, deck and kerbs, placement 2 of 3",
  owner: "Harrowmead Bridgeworks",
  laboratory: "Tallow & Finch Site Laboratory",
  supplier: "Quillstone Ready Mix, Orrin plant",
  date: "2026-06-09",
} as const;

export type DayCell = string | number | null;

/** How the cells of a column are shown: as they are, to two decimals, as a day, as a time of day. */
export type Shown = "plain" | "hundredths" | "day" | "time";

export interface DayColumn {
  readonly header: string;
  readonly shown: Shown;
  /** Width in characters. */
  readonly width: number;
}

const column = (header: string, width: number, shown: Shown = "plain"): DayColumn => ({
  header,
  shown,
  width,
});

export const COLUMNS: readonly DayColumn[] = [
  column("Sample", 9),
  column("Load", 7),
  column("Date", 12, "day"),
  column("Time", 8, "time"),
  column("Mix", 12),
  column("First reading (%)", 12, "hundredths"),
  column("Second reading (%)", 12, "hundredths"),
  column("Third reading (%)", 12, "hundredths"),
  column("Cups", 7),
  column("Alcohol (oz)", 10),
  column("Foam (divisions)", 13),
  column("Time to settle (min)", 12),
  column("Packed concrete", 11),
  column("Reported air (%)", 12, "hundredths"),
  column("Low (%)", 8, "hundredths"),
  column("High (%)", 8, "hundredths"),
  column("Tested by", 14),
  column("Remarks", 30),
];

/** What the specification of the scenario asks of each mix, % air. */
const MIXES: Readonly<Record<string, readonly DayCell[]>> = {
  deck: ["Deck LW-40", 4.5, 7.5],
  kerb: ["Kerb LW-35", 5, 8],
};
const TESTERS: Readonly<Record<string, string>> = { A: "A. Brinnock", T: "T. Ostrander" };

// Sample, load, time, mix | first, second, third reading | cups, alcohol, foam, time to settle, packed | reported, by, remarks
const FIELD_BOOK = `
S-01 ,L-01,06:40,deck | 5.5    ,5.75 ,     | 0,16   ,0.5,2.5,no  | 5.75 ,A,First load
S-02 ,L-02,06:55,deck | 6      ,6    ,     | 0,16   ,0.5,2  ,no  | 6    ,T,
S-03 ,L-03,07:10,deck | 6.25   ,6.5  ,     | 0,32   ,1  ,3  ,no  | 6.5  ,A,
S-04 ,L-04,07:25,deck | 6.25   ,6.5  ,     | 0,48   ,1  ,3.5,no  | 6.25 ,T,
S-05 ,L-05,07:40,deck | 5.5    ,6.25 ,6.25 | 0,24   ,0.5,3  ,no  | 6.25 ,A,
S-06 ,L-06,07:55,deck | 6.5    ,6.5  ,     | 0,64   ,1  ,4  ,no  | 6.5  ,T,
S-07 ,L-07,08:10,deck | 6      ,6    ,     | 0,16   ,3  ,5  ,no  |      ,A,Foam did not break
S-07 ,L-07,08:22,deck | 6.25   ,6.25 ,     | 0,48   ,1  ,3  ,no  | 6    ,A,Repeat with more alcohol
S-08 ,L-08,08:35,deck | 6.75   ,7    ,     | 0,32   ,1  ,3  ,no  | 7    ,T,
S-09 ,L-09,08:50,deck | 7.5    ,7.5  ,     | 0,24   ,0.5,2.5,no  | 7.5  ,A,
S-10 ,L-10,09:05,deck | 7.5    ,7.75 ,     | 0,32   ,1  ,3  ,no  | 7.75 ,T,Check test ordered
S-10C,L-10,09:17,deck | 7.25   ,7.5  ,     | 0,32   ,1  ,3  ,no  | 7.5  ,T,Check test
S-11 ,L-11,09:30,deck | 8.5    ,8.5  ,     | 1,48   ,1.5,4  ,no  | 8.25 ,A,Load held
S-12 ,L-12,09:45,deck | 8.25   ,8.5  ,     | 2,32   ,1  ,4  ,no  | 10.5 ,T,Load sent back
S-13 ,L-13,10:05,deck | 5.5    ,6.25 ,6.25 | 0,16   ,0.5,3  ,no  | 6    ,A,
S-14 ,L-14,10:20,deck | 5.75   ,5.75 ,     | 0,56   ,1  ,3  ,no  | 5.3  ,T,
S-15 ,L-15,10:35,deck | about 6,6    ,     | 0,24   ,1  ,3  ,no  | 6    ,A,
S-16 ,L-16,10:50,deck | 6.25   ,6.25 ,     | 0,     ,1  ,3  ,no  | 6.25 ,T,
S-17 ,L-17,11:05,deck | 6.5    ,6.5  ,     | 0,32   ,1  ,7.5,no  |      ,A,Level kept falling
S-17 ,L-17,11:20,deck | 6.75   ,6.75 ,     | 0,64   ,1  ,4  ,no  | 6.25 ,A,Repeat with more alcohol
S-18 ,L-18,11:35,deck | 5      ,5.5  ,6    | 0,16   ,1  ,3  ,no  | 6    ,T,
S-19 ,L-19,11:50,deck | 5.25   ,5.25 ,     | 0,24   ,0.5,2.5,yes |      ,A,Concrete stuck in the bowl
S-19 ,L-19,12:02,deck | 6      ,6    ,     | 0,32   ,0.5,2.5,no  | 6    ,A,Repeat with more alcohol
S-20 ,L-20,12:40,deck | 4.75   ,4.75 ,     | 0,48   ,1  ,3  ,no  | 4.5  ,T,
S-21 ,L-21,12:55,deck | 4.5    ,4.5  ,     | 0,56   ,1  ,3  ,no  | 4    ,A,Check test ordered
S-21C,L-21,13:07,deck | 4.75   ,5    ,     | 0,56   ,1  ,3  ,no  | 4.5  ,A,Check test
S-22 ,L-22,13:20,deck | 6      ,     ,     | 0,24   ,0.5,2.5,no  | 6    ,T,
S-23 ,L-23,13:35,deck | 6      ,6.75 ,     | 0,32   ,1  ,3  ,no  | 6.75 ,A,
S-24 ,L-24,13:50,deck | 6.1    ,6.25 ,     | 0,24   ,0.5,3  ,no  | 6.25 ,T,
S-25 ,L-25,14:10,kerb | 7.75   ,8    ,     | 0,80   ,2  ,5  ,no  | 7    ,A,First load for the kerbs
S-26 ,L-26,14:25,kerb | 6.5    ,6.5  ,     | 0,32   ,1  ,3  ,no  | 6.25 ,T,
S-27 ,L-27,14:40,kerb | 5.75   ,5.75 ,     | 0,64   ,1  ,4  ,no  | 6.25 ,A,
S-28 ,L-28,14:55,kerb | 6      ,6.25 ,     | 0,48   ,1  ,3  ,no  | 6    ,T,

S-29 ,L-29,15:30,deck | 5 1/2  ,5 3/4,     | 0,24   ,0.5,3  ,no  | 5.75 ,A,
S-30 ,L-30,15:45,deck | 6.25   ,6.25 ,     | 0,1.4 L,1  ,3  ,no  | 6    ,T,Last load
`;

/** The rows under the headers; the one without a test is blank. */
export const ROWS: readonly (readonly DayCell[])[] = FIELD_BOOK.split("\n").slice(1, -1).map(rowOf);

function rowOf(line: string): DayCell[] {
  if (line === "") return COLUMNS.map(() => null);
  const [sample, load, time, mix, ...rest] = line.split(/[,|]/).map(cellOf);
  const [reported, tester, remark] = rest.slice(-3);
  const [mixName, low, high] = MIXES[String(mix)]!;
  const place = [sample!, load!, SCENARIO.date, time!, mixName!];
  return [
    ...place,
    ...rest.slice(0, -3),
    reported!,
    low!,
    high!,
    TESTERS[String(tester)]!,
    remark!,
  ];
}

function cellOf(written: string): DayCell {
  const text = written.trim();
  if (text === "") return null;
  return /^\d+(\.\d+)?$/.test(text) ? Number(text) : text;
}
