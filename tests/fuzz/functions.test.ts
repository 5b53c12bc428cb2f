import { fuzz } from "./fuzz";
import { TARGETS } from "./hostile-call";

/** Calls of each function here; `npm run fuzz` makes as many more as one likes. */
const CALLS = 10_000;
/** A check of a whole sheet is a hundred calls of others. */
const CHECKS = 1000;
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
