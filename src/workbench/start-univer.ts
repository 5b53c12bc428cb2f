import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import conditionalFormattingWords from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import coreWords from "@univerjs/preset-sheets-core/locales/en-US";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationWords from "@univerjs/preset-sheets-data-validation/locales/en-US";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteWords from "@univerjs/preset-sheets-note/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import "@univerjs/preset-sheets-note/lib/index.css";
import type { ErrorSentences } from "./functions/error-sentences";
import { functionHelp } from "./functions/function-help";
import type { LoadedFunction } from "./functions/load-functions";
import { NAMESPACE, worksheetFunction } from "./functions/worksheet-function";

/**
 * Starts a spreadsheet that knows our worksheet functions.
 *
 * @param place The element to put it into.
 * @param functions The worksheet functions.
 * @param sentences Where the functions say why a cell shows an error.
 */
export function startUniver(
  place: HTMLElement,
  functions: readonly LoadedFunction[],
  sentences: ErrorSentences,
): FUniver {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: {
      [LocaleType.EN_US]: mergeLocales(
        coreWords,
        conditionalFormattingWords,
        validationWords,
        noteWords,
      ),
    },
    logLevel: LogLevel.ERROR,
    darkMode: dark.matches,
  });
  const presets = [
    UniverSheetsCorePreset({
      container: place,
      ribbonType: "simple",
      formula: {
        function: functions.map((each) => [
          worksheetFunction(each, sentences),
          NAMESPACE + each.declaration.name,
        ]),
        description: functions.map(functionHelp),
      },
    }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsDataValidationPreset(),
    UniverSheetsNotePreset(),
  ];
  for (const plugin of presets.flatMap(({ plugins }) => plugins))
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  const api = FUniver.newAPI(univer);
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));
  return api;
}
