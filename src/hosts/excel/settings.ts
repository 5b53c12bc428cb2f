import { settingsFromText } from "../settings-text";
import type { Settings } from "../sheet-host";
import { inExcel } from "./in-excel";

/** The name under which our settings stand in the workbook. */
const KEY = "fresh-concrete-functions";

/** Reads the settings; none where there are none or they cannot be read. */
export function readSettings(): Promise<Settings> {
  return inExcel(async (context) => {
    const held = context.workbook.settings.getItemOrNullObject(KEY);
    held.load("value");
    await context.sync();
    return held.isNullObject ? {} : settingsFromText(held.value);
  });
}

/** Keeps the settings in the workbook. They are one text, which every Excel gives back unchanged. */
export function writeSettings(settings: Settings): Promise<void> {
  return inExcel(async (context) => {
    context.workbook.settings.add(KEY, JSON.stringify(settings));
    await context.sync();
  });
}
