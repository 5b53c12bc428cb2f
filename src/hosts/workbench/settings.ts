import type { Settings } from "../sheet-host";

const KEY = "fresh-concrete-settings";

/** The settings kept in this browser; none where it keeps nothing. */
export function keptSettings(): Settings {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "{}");
    return typeof kept === "object" && kept !== null ? (kept as Settings) : {};
  } catch {
    return {};
  }
}

/** Keeps the settings in this browser. A browser that refuses forgets them when the page closes. */
export function keepSettings(settings: Settings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch {
    // Nothing is lost but a preference.
  }
}
