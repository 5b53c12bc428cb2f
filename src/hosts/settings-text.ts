import type { Settings } from "./sheet-host";

/** Settings whose names begin so are those of one workbook, and never another's. */
export const OF_THIS_WORKBOOK = "report-";

/**
 * The settings in a text that was kept with a workbook or a browser. What is not one is left out: the
 * text lies where anybody may have changed it.
 */
export function settingsFromText(kept: unknown): Settings {
  if (typeof kept !== "string") return {};
  try {
    const read: unknown = JSON.parse(kept);
    if (typeof read !== "object" || read === null || Array.isArray(read)) return {};
    return Object.fromEntries(Object.entries(read).filter(([, value]) => isSetting(value)));
  } catch {
    return {};
  }
}

function isSetting(value: unknown): boolean {
  return ["string", "number", "boolean"].includes(typeof value);
}
