import type { Words } from "../sentence";

/** What stands on the sheet that holds the setup. Every heading here is one that a setup is read by. */
export const setupSheetMessages = {
  "setup-sheet-title":
    "Read with every check. Change it by hand as you like; notes and columns of your own stay as they are.",
  "setup-heading-header": "Header",
  "setup-heading-taken-for": "Taken for",
  "setup-heading-unit": "Unit",
  "setup-heading-setting": "Setting",
  "setup-heading-value": "Value",
  "setup-heading-mix": "Mix",
  "setup-heading-target": "Target",
  "setup-heading-tolerance": "Tolerance",
  "setup-heading-low": "Low",
  "setup-heading-high": "High",
  "setup-heading-aggregate": "Aggregate",
  "setup-heading-aggregate-size": "Aggregate size",
  "setup-heading-exposure": "Exposure",
  "setup-heading-density-low": "Density low",
  "setup-heading-density-high": "Density high",
  "setup-heading-slump-low": "Slump low",
  "setup-heading-slump-high": "Slump high",
  "setup-heading-temperature-low": "Temperature low",
  "setup-heading-temperature-high": "Temperature high",
  "setup-heading-source": "Source",
  "setup-scale-end": "End of the scale",
  "setup-dates-from": "Days counted from",
  "setup-source-with-tolerance": ({ table, tolerance }: Words<"table" | "tolerance">) =>
    `${table}; ± ${tolerance} as usual, from memory`,
  "setup-not-ours": "not ours",
  "setup-as-found": "as found",
} as const;
