import { readFileSync } from "node:fs";
import { checkFile } from "../../src/command-line/check-file";
import { openedFile } from "../../src/files/open-file";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { Problem } from "../../src/measure/problem";
import { Random } from "../simulation/random";
import { brokenInside, flipped } from "./broken-file";

/** Files of each kind here; FILES=20000 makes more. */
const FILES = Number(process.env["FILES"] ?? 100);
const SEED = Number(process.env["SEED"] ?? 173);
/** Milliseconds of the processor; far more than a file of this size takes. */
const LONGEST = 2000;

const ORIGINALS = [
  "tests/workbench/files/by-openpyxl.xlsx",
  "tests/workbench/files/by-libreoffice.xlsx",
  "samples/day-of-tests.xlsx",
].map((name) => new Uint8Array(readFileSync(name)));
const CSV = new Uint8Array(readFileSync("samples/day-of-tests.csv"));

const FAULTS: Readonly<Record<string, (random: Random) => readonly [string, Uint8Array]>> = {
  "bytes turned over in a workbook": (random) => ["a.xlsx", flipped(random.one(ORIGINALS), random)],
  "parts of a workbook removed or broken": (random) => [
    "a.xlsx",
    brokenInside(random.one(ORIGINALS), random),
  ],
  "bytes turned over in a text": (random) => ["a.csv", flipped(CSV, random)],
};

/** What is wrong with the way in which a file was opened and checked; nothing where all is well. */
async function broken(name: string, bytes: Uint8Array): Promise<string | undefined> {
  const before = process.cpuUsage();
  try {
    const file = openedFile(name, bytes, 10_000);
    if (file.kind === "workbook") await readWorkbook(file.opened);
  } catch (error) {
    if (!(error instanceof Problem)) return `throws ${String(error)}`;
  }
  let said = 0;
  for await (const { kind, ...rest } of checkFile(name, () => bytes, {}, true)) {
    said += 1;
    const { message = "Fine." } = rest as { message?: string };
    // A finding begins with its column as it is headed, however that may be written.
    if (!/^\S[^]*[.?]$/u.test(message)) return `${kind} says no sentence: ${message}`;
    if (/undefined|\bnull\b|NaN|\[object/.test(message)) return `${kind} leaks: ${message}`;
  }
  if (said === 0) return "says nothing";
  const { user } = process.cpuUsage(before);
  return user / 1000 > LONGEST ? "takes too long" : undefined;
}

test.each(Object.keys(FAULTS))(
  "%s: it is read, or one sentence says why not",
  async (kind) => {
    const found: unknown[] = [];
    for (let i = 0; i < FILES; i++) {
      const [name, bytes] = FAULTS[kind]!(new Random(SEED * 100_003 + i));
      // What the process does beside it is its time too: one that is slow is tried again.
      const what = (await broken(name, bytes)) && (await broken(name, bytes));
      if (what) found.push({ i, what });
    }
    expect(found).toEqual([]);
  },
  600_000,
);
