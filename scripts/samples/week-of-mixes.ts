/**
 * A week of volumetric air tests of three mixes, on a sheet of a laboratory that heads its columns in its
 * own way, with the setup that says what they hold and what is specified for each mix. The site, the
 * people, the companies and the numbers are invented.
 *
 * `tests/samples/week-of-mixes.test.ts` says what each row is meant to show.
 */
export const WEEK = {
  project: "Sallowby quay, retaining wall and lightweight topping",
  laboratory: "Tallow & Finch Site Laboratory",
} as const;

export type WeekCell = string | number | null;

export const WEEK_HEADERS = [
  "Sample",
  "Date",
  "Mix",
  "Pointer A",
  "Pointer B",
  "Spirit",
  "Foam (divisions)",
  "Density (lb/ft³)",
  "Slump (in)",
  "Conc. temp. (°F)",
  "Crew",
] as const;

const WALL = "LW-40 wall";
const TOPPING = "LW-35 topping";
const PIER = "NW-45 pier";

/** One row a test: sample, day, mix, the two readings, alcohol in oz, foam, density, slump, temperature, crew. */
export const WEEK_ROWS: readonly (readonly WeekCell[])[] = [
  ["W-01", "2026-06-15", WALL, 6, 6, 32, 0.5, 115, 4, 68, "north"],
  ["W-02", "2026-06-15", PIER, 5, 5, 16, 0.5, 145, 3.5, 67, "south"],
  ["W-03", "2026-06-16", WALL, 7.75, 7.75, 32, 1, 113, 4.5, 70, "north"],
  ["W-04", "2026-06-16", TOPPING, 7.75, 7.75, 32, 1, 108, 4, 71, "north"],
  ["W-05", "2026-06-16", "lw-40  WALL", 6.25, 6.5, 48, 1, 115, 4, 71, "south"],
  ["W-06", "2026-06-17", PIER, 3.25, 3.25, 16, 0.5, 147, 3, 72, "south"],
  ["W-07", "2026-06-17", WALL, 5.75, 6, 24, 0.5, 119, 3.5, 73, "north"],
  ["W-08", "2026-06-17", TOPPING, 6.5, 6.5, 32, 0.5, 109, 6, 74, "north"],
  ["W-09", "2026-06-18", WALL, 6, 6, 16, 0.5, 116, 4, 93, "north"],
  ["W-10", "2026-06-18", PIER, 5.5, 5.5, 24, 0.5, 144, 3.5, 84, "south"],
  ["W-11", "2026-06-18", TOPPING, 5, 5.75, 24, 0.5, 110, 4, 86, "north"],
  ["W-12", "2026-06-19", WALL, 6.5, 6.5, 64, 1, 115, 4, 76, "north"],
  ["W-13", "2026-06-19", "LW-30 trial", 8, 8, 32, 1, 101, 5, 75, "north"],
  ["W-14", "2026-06-19", PIER, 6.5, 6.5, 16, 0.5, 142, 3.5, 74, "south"],
];

const BLANK: readonly WeekCell[] = [null, null, null];

/** What the sheet of the setup says of columns: header, what it is taken for, unit. */
const COLUMNS: readonly (readonly WeekCell[])[] = [
  ["Header", "Taken for", "Unit"],
  ["Pointer A", "first reading", null],
  ["Pointer B", "second reading", null],
  ["Spirit", "alcohol", "oz"],
  ["Crew", "not ours", null],
];

const SETTINGS: readonly (readonly WeekCell[])[] = [
  ["Setting", "Value"],
  ["End of the scale", 9],
  ["Days counted from", 1900],
];

/** ACI 318-19 Table 19.3.3.1 for F2 and 3/4 in is 6.0 %; the other limits are the site's own, invented. */
const MIXES: readonly (readonly WeekCell[])[] = [
  [
    ...["Mix", "Target", "Tolerance", "Low", "High", "Aggregate", "Aggregate size", "Exposure"],
    ...["Density low (lb/ft³)", "Density high (lb/ft³)", "Slump low (in)", "Slump high (in)"],
    ...["Temperature low (°F)", "Temperature high (°F)", "Source"],
  ],
  [
    WALL,
    6,
    1.5,
    null,
    null,
    "expanded shale",
    "3/4 in",
    "F2",
    112,
    118,
    3,
    5,
    50,
    90,
    "ACI 318-19",
  ],
  [
    TOPPING,
    null,
    null,
    5,
    8,
    "expanded shale",
    "1/2 in",
    null,
    105,
    112,
    3,
    5,
    50,
    90,
    "drawing Q-7",
  ],
  [
    PIER,
    5,
    1.5,
    null,
    null,
    "limestone",
    "1 in",
    "F1",
    null,
    null,
    2.5,
    4.5,
    50,
    90,
    "drawing Q-2",
  ],
];

/** The sheet of the setup: what it is, and the three tables beside each other. */
export const WEEK_SETUP: readonly (readonly WeekCell[])[] = [
  [
    "Read with every check. Change it by hand as you like; notes and columns of your own stay as they are.",
  ],
  ...COLUMNS.map((columns, i) => [
    ...columns,
    null,
    ...(SETTINGS[i] ?? BLANK.slice(1)),
    null,
    ...(MIXES[i] ?? MIXES[0]!.map(() => null)),
  ]),
];
