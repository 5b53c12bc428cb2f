import { LANGUAGES, languageOf, type Language } from "./language";
import { speak } from "./speech";

const KEPT_AS = "fresh-language";

/** The language that somebody chose on this machine; none where nobody did, or nothing is kept. */
function chosenLanguage(): Language | undefined {
  try {
    const kept = localStorage.getItem(KEPT_AS);
    return LANGUAGES.find((language) => language === kept);
  } catch {
    return undefined;
  }
}

/**
 * Speaks the language that somebody chose on this machine, else that of the spreadsheet, and tells the
 * page so.
 *
 * @param locale That of the spreadsheet, such as "es-MX"; that of the browser where there is none.
 */
export function speakAsChosen(locale: string | undefined): void {
  speakOnPage(chosenLanguage() ?? languageOf(locale));
}

/** Speaks another language from now on, on this machine. */
export function chooseLanguage(language: Language): void {
  try {
    localStorage.setItem(KEPT_AS, language);
  } catch {
    // Where nothing may be kept it is chosen for as long as the page is open.
  }
  speakOnPage(language);
}

function speakOnPage(language: Language): void {
  speak({ language });
  document.documentElement.lang = language;
}
