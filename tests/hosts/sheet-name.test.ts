import { freeSheetName } from "../../src/hosts/sheet-name";

// Source: what Excel says when it refuses a name: 31 characters, none of : \ / ? * [ ], no apostrophe at
// either end, not "History"; from memory.
test.each([
  { wanted: "Findings", taken: [], name: "Findings" },
  { wanted: "Findings", taken: ["findings"], name: "Findings (2)" },
  { wanted: "Findings", taken: ["Findings", "FINDINGS (2)"], name: "Findings (3)" },
  { wanted: "5/31: north [A]?*\\", taken: [], name: "5 31  north  A" },
  { wanted: "'quoted'", taken: [], name: "quoted" },
  { wanted: "History", taken: [], name: "History (2)" },
  { wanted: "", taken: [], name: "Results" },
  { wanted: "x".repeat(40), taken: [], name: "x".repeat(31) },
  { wanted: "x".repeat(40), taken: ["x".repeat(31)], name: `${"x".repeat(27)} (2)` },
])("$wanted becomes $name", ({ wanted, taken, name }) => {
  expect(freeSheetName(wanted, taken)).toBe(name);
});
