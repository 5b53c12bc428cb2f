import { namingFile } from "../files/open-file";
import type { DecimalMark } from "../measure/number-from-cell";
import { readSetup, type Setup } from "../reading/setup/setup";
import { isSetupSheet } from "../reading/setup/setup-sheet-name";
import { sheetsOf } from "./check-file";
import type { SaidNotRead } from "./said";

/**
 * Reads a setup from a CSV file or a workbook, where the sheet named so holds it, else the first one, with what is to be said of the file.
 *
 * @throws Problem with a sentence that names the file, where it cannot be opened.
 */
export async function setupOfFile(
  name: string,
  bytes: Uint8Array,
  decimal: DecimalMark,
): Promise<{ readonly setup: Setup; readonly remarks: readonly SaidNotRead[] }> {
  try {
    const { read, remarks } = await sheetsOf(name, bytes);
    const sheet = read.find((each) => isSetupSheet(each.name ?? "")) ?? read[0];
    return { setup: readSetup(sheet?.rows ?? [], decimal), remarks };
  } catch (error) {
    throw namingFile(error, name);
  }
}
