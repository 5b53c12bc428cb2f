const LONGEST = 31;
const NOT_IN_A_NAME = /[:\\/?*[\]]/g;

/**
 * A name for a new sheet that Excel takes, and any other spreadsheet, and that no sheet has yet.
 *
 * @param wanted The name wanted; what Excel does not take in a name is left out.
 * @param taken Names of the sheets there are. Excel does not tell capitals from small letters.
 */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const lower = new Set(taken.map((name) => name.toLowerCase()));
  // Excel keeps this name for a sheet of its own.
  lower.add("history");
  const base =
    wanted
      .replace(NOT_IN_A_NAME, " ")
      .replace(/^'+|'+$/g, "")
      .trim() || "Results";
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : ` (${number})`;
    const name = base.slice(0, LONGEST - ending.length).trimEnd() + ending;
    if (!lower.has(name.toLowerCase())) return name;
  }
}
