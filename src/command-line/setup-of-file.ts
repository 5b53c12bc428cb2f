import { namingFile } from "../files/open-file";
import type { DecimalMark } from "../measure/number-from-cell";
import { readSetup, type Setup } from "../reading/setup/setup";
import { sheetsOf } from "./check-file";
import type { SaidNotRead } from "./said";

/** The sheet of a workbook that holds its setup; elsewhere the first one does. */
const SETUP_SHEET = "fresh setup";

/**
 * Reads a setup from a CSV file or a workbook, with what is to be said of the file.
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
    const sheet = read.find((each) => each.name?.trim().toLowerCase() === SETUP_SHEET) ?? read[0];
    return { setup: readSetup(sheet?.rows ?? [], decimal), remarks };
  } catch (error) {
    throw namingFile(error, name);
  }
}
