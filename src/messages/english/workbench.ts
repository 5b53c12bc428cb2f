import type { Words } from "../sentence";

/** Sentences of the workbench, the page with a spreadsheet of its own. */
export const workbenchMessages = {
  "function-failed":
    "The function stopped for a reason it does not know. Please report the formula and what its cells hold.",
  "spreadsheet-failed":
    "The spreadsheet did not do this. Leave the cell that is being edited, then try again.",
  "arguments-too-few": ({ name, needed }: Words<"name" | "needed">) =>
    `${name} needs more: ${needed}. Give a value or a cell for each.`,
  "arguments-too-many": ({ name, count, taken }: Words<"name" | "count" | "taken">) =>
    `${name} is given ${count} values and takes only these: ${taken}.`,
  "changes-would-be-lost":
    "The workbook has been changed and the changes are not saved. Open another one and lose them?",
  "workbench-not-started":
    "The workbench could not start, because a part of it is missing. Run npm start again, then load the page again.",
  "sample-not-loaded": "The sample could not be loaded. Start the workbench again with npm start.",
} as const;
