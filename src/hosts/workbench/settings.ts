import { settingsFromText } from "../settings-text";
import type { Settings } from "../sheet-host";

const KEY = "fresh-concrete-settings";

/** Settings kept in this browser; in one that keeps nothing, until the page is closed. */
export class KeptSettings {
  private settings = fromBrowser();

  read(): Settings {
    return this.settings;
  }

  keep(settings: Settings): void {
    this.settings = settings;
    try {
      localStorage.setItem(KEY, JSON.stringify(settings));
    } catch {
      // Nothing is lost but a preference.
    }
  }
}

function fromBrowser(): Settings {
  try {
    return settingsFromText(localStorage.getItem(KEY));
  } catch {
    return {};
  }
}
