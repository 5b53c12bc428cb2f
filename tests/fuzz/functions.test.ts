import { findings } from "../../src/functions/field-sheet";
import { randomSheet } from "../digests/random-sheet";
import { Random } from "../simulation/random";
import { fuzz } from "./fuzz";
import { TARGETS } from "./hostile-call";

/** Calls of each function here; `npm run fuzz` makes as many more as one likes. */
const CALLS = 5000;
/** A check of a whole sheet is a hundred calls of others. */
const CHECKS = 500;
const SEED = 173;

test.each(TARGETS)(
  "FRESH.$id keeps its promises whatever it is called with",
  (target) => {
    const calls = ["CHECK", "FINDINGS"].includes(target.id) ? CHECKS : CALLS;
    const { valued, broken } = fuzz(target, calls, SEED);
    expect(broken).toEqual([]);
    // Calls that are all refused at the door would prove little.
    expect(valued).toBeGreaterThan(0.02);
  },
  60_000,
);

test("no text of a cell or a header makes a sentence long", () => {
  const random = new Random(SEED);
  const long = "word ".repeat(6000);
  const lengthened = (cell: unknown) => (random.chance(0.15) ? `${String(cell)} ${long}` : cell);
  const tooLong = new Set<unknown>();
  for (let number = 0; number < 300; number++) {
    const { headers, rows } = randomSheet(number);
    const given = [headers, ...rows].map((row) => (row as unknown[]).map(lengthened));
    for (const finding of findingsIn([given[0]!], given.slice(1))) {
      // A wrong result with what may have led to it is three sentences.
      if (String(finding[6]).length > 600) tooLong.add(finding[2]);
    }
  }
  expect([...tooLong]).toEqual([]);
});

function findingsIn(headers: unknown[][], rows: unknown[][]): unknown[][] {
  try {
    return findings(headers, rows).slice(1);
  } catch (error) {
    return [["", "", "the whole", "", "", "", (error as Error).message]];
  }
}
