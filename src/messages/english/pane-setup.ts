import type { Words } from "../sentence";

/** What the pane says of columns and of the setup that is kept in the workbook. */
export const paneSetupMessages = {
  "pane-columns-hint":
    "What each is taken for, and why. Choose something else where that is wrong; the check uses it at once.",
  "pane-say-columns": "No meter readings were found. Say below what these columns hold.",
  "pane-take-column": ({ header }: Words<"header">) => `What “${header}” is taken for`,
  "pane-unit-of-column": ({ header }: Words<"header">) => `Unit of “${header}”`,
  "pane-unit-as-written": "as written",
  "pane-not-ours": "not ours",
  "pane-as-found": "as found",
  "pane-column-asked": "say which",
  "pane-column-unknown": "not read",
  "pane-column-not-ours": "left alone",
  "pane-column-empty": "empty",
  "pane-sure-kept": "as you said",
  "pane-sure": "sure",
  "pane-fairly-sure": "fairly sure",
  "pane-sure-not-read": "not read",
  "pane-header-not-alone":
    "Another column is headed the same, so nothing can be kept of it. Give each its own header.",
  "pane-keep-setup": "Keep in the workbook",
  "pane-not-kept-yet": ({ count, sheet }: Words<"count" | "sheet">) =>
    `Not kept yet: ${count}. They go on the sheet “${sheet}”.`,
  "pane-fields-likely": "It may be",
  "pane-fields-air-test": "The air test",
  "pane-fields-identity": "Which test",
  "pane-fields-limits": "Specified air",
  "pane-fields-procedure": "How it was tested",
  "pane-fields-sampling": "When it was sampled",
  "pane-fields-delivery": "Load and specimens",
  "pane-fields-aggregate": "Aggregate",
  "pane-fields-density": "Density and yield",
  "pane-fields-slump": "Slump, temperature, weather",
  "pane-mixes": "Specification by mix",
  "pane-mixes-counted": ({ mixes, limited }: Words<"mixes" | "limited">) =>
    `Mixes in these tests: ${mixes}. With air limits in the setup: ${limited}.`,
  "pane-mixes-hint": ({ sheet }: Words<"sheet">) =>
    `They are written on the sheet “${sheet}”, where you can give limits by hand. What stands there stays.`,
  "pane-specified-air-from": "Specified air from",
  "pane-specified-air-none": "no table, names only",
  "pane-exposure": "Exposure",
  "pane-aggregate-size": "Aggregate size",
  "pane-add-mixes": "Write the mixes into the workbook",
  "pane-nothing-compared":
    "Nothing was compared with a specification: no limits were read from the sheet, its setup or this pane.",
  "setup-sheet-not-ours": ({ sheet }: Words<"sheet">) =>
    `The sheet “${sheet}” holds no table of a setup, so nothing of it is read and nothing is written to it. Give it another name, and the setup can be kept on a sheet of its own.`,
  "setup-sheet-renamed": ({ sheet, now }: Words<"sheet" | "now">) =>
    `The sheet “${sheet}” is named “${now}” now, so its setup is not applied. Name it “${sheet}” again to have it applied.`,
  "setup-sheet-gone": ({ sheet }: Words<"sheet">) =>
    `The sheet “${sheet}” is not in the workbook any more, so its setup is not applied.`,
  "setup-sheet-no-unit":
    "The table of columns in the setup has no column for the unit. Head one of them Unit, and keep it again.",
  "setup-days-differ": ({ setup, workbook }: Words<"setup" | "workbook">) =>
    `The setup says that days are counted from ${setup}, and the workbook counts them from ${workbook}. Dates were read as the workbook counts them. Correct the setup.`,
  "pane-setup-kept": ({ sheet, count }: Words<"sheet" | "count">) =>
    `Kept on the sheet “${sheet}”: ${count}.`,
  "pane-mixes-added": ({ sheet, added, filled }: Words<"sheet" | "added" | "filled">) =>
    `On the sheet “${sheet}”, mixes added: ${added}; specified air filled in: ${filled}.`,
  "pane-mix-not-filled": ({ mix, why }: Words<"mix" | "why">) =>
    `Mix “${mix}” got no specified air. ${why}`,
  "pane-mixes-more-not-filled": ({ count }: Words<"count">) => `So it is with ${count} more.`,
  "pane-mixes-no-columns":
    "The table of mixes in the setup has no columns Target and Tolerance, or Low, for specified air. Head some so.",
  "pane-mixes-all-there": "Every mix of these tests is in the setup already.",
  "pane-no-mixes": "No mix is read in these tests.",
} as const;
