import { OF_THIS_WORKBOOK, settingsFromText } from "../settings-text";
import type { Settings } from "../sheet-host";

const KEY = "fresh-concrete-settings";

/**
 * Settings kept in this browser; in one that keeps nothing, until the page is closed. Those of one workbook
 * are kept by its name, so that the project of one does not get into the report of another.
 */
export class KeptSettings {
  private readonly own: string;
  private settings: Settings;

  /** @param workbook The name of the workbook. */
  constructor(workbook: string) {
    this.own = `${KEY} ${workbook}`;
    this.settings = { ...fromBrowser(KEY), ...fromBrowser(this.own) };
  }

  read(): Settings {
    return this.settings;
  }

  keep(settings: Settings): void {
    this.settings = settings;
    const kept = Object.entries(settings);
    const isOwn = ([name]: (typeof kept)[number]) => name.startsWith(OF_THIS_WORKBOOK);
    const own = kept.filter((setting) => isOwn(setting) && setting[1] !== "");
    intoBrowser(KEY, Object.fromEntries(kept.filter((setting) => !isOwn(setting))));
    intoBrowser(this.own, own.length > 0 ? Object.fromEntries(own) : undefined);
  }
}

function fromBrowser(key: string): Settings {
  try {
    return settingsFromText(localStorage.getItem(key));
  } catch {
    return {};
  }
}

function intoBrowser(key: string, settings: Settings | undefined): void {
  try {
    if (settings) localStorage.setItem(key, JSON.stringify(settings));
    else localStorage.removeItem(key);
  } catch {
    // Nothing is lost but a preference.
  }
}
