import type { LocaleService, Univer } from "@univerjs/core";

/**
 * Closes the workbench's spreadsheet where it runs without a screen.
 *
 * A calculation tells of its progress a second after its start, in words, and does so after the
 * spreadsheet is closed as well. By then its language is gone, so that the words would be refused into
 * whatever runs next: they are answered with none.
 *
 * @param univer The spreadsheet.
 * @param service The name under which it holds its words.
 */
export function closeSpreadsheet(univer: Univer, service: typeof LocaleService): void {
  const words = univer.__getInjector().get(service);
  univer.dispose();
  Object.assign(words, { t: () => "" });
}
