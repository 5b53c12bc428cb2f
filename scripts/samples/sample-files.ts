import { csvOf, xlsxOf } from "../write-workbook";
import { COLUMNS, ROWS } from "./day-of-tests";
import { dayOfTestsSheets } from "./day-of-tests-sheets";
import { oneTestSheets } from "./one-test-form";
import { templateSheets } from "./template";
import { weekOfMixesSheets } from "./week-of-mixes-sheets";

/** The sample files by name, made from the scenario and the functions as they are now. */
export async function sampleFiles(): Promise<Record<string, string | Uint8Array>> {
  return {
    "day-of-tests.xlsx": await xlsxOf("A day of volumetric air tests", dayOfTestsSheets()),
    "template.xlsx": await xlsxOf("Volumetric air tests", templateSheets()),
    "one-test-form.xlsx": await xlsxOf("One volumetric air test", oneTestSheets()),
    "week-of-mixes.xlsx": await xlsxOf(
      "A week of volumetric air tests of three mixes",
      weekOfMixesSheets(),
    ),
    "day-of-tests.csv": csvOf([COLUMNS.map(({ header }) => header), ...ROWS]),
  };
}
