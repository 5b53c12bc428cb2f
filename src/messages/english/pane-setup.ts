import type { Words } from "../sentence";

/** What the pane says of columns and of the setup that is kept in the workbook. */
export const paneSetupMessages = {
  "setup-sheet-not-ours": ({ sheet }: Words<"sheet">) =>
    `The sheet “${sheet}” holds no table of a setup, so nothing of it is read and nothing is written to it. Give it another name, and the setup can be kept on a sheet of its own.`,
  "setup-sheet-renamed": ({ sheet, now }: Words<"sheet" | "now">) =>
    `The sheet “${sheet}” is named “${now}” now, so its setup is not applied. Name it “${sheet}” again to have it applied.`,
  "setup-sheet-gone": ({ sheet }: Words<"sheet">) =>
    `The sheet “${sheet}” is not in the workbook any more, so its setup is not applied.`,
  "setup-sheet-no-unit":
    "The table of columns in the setup has no column for the unit. Head one of them Unit, and keep it again.",
  "setup-days-differ": ({ setup, workbook }: Words<"setup" | "workbook">) =>
    `The setup says that days are counted from ${setup}, and the workbook counts them from ${workbook}. Dates were read as the setup says.`,
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
