import { limitComplaint } from "../../../src/pane/state/typed-limits";

const ABOUT = /is not a number/;
const CROSSED = /low limit, 8 %, .*high limit, 5 %/;

test.each<[low: string, high: string, ofLow: RegExp | "", ofHigh: RegExp | ""]>([
  ["", "", "", ""],
  ["5", "8", "", ""],
  ["5", "", "", ""],
  ["about 5", "8", ABOUT, ""],
  ["5", "eight", "", ABOUT],
  ["8", "5", "", CROSSED],
  ["about 5", "eight", ABOUT, ABOUT],
])("limits typed as %j and %j", (low, high, ofLow, ofHigh) => {
  for (const [which, said] of [
    ["low", ofLow],
    ["high", ofHigh],
  ] as const) {
    const complaint = limitComplaint(which, { low, high }, ".");
    if (said === "") expect(complaint).toBe("");
    else expect(complaint).toMatch(said);
  }
});
