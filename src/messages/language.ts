/** The languages in which this is said. */
export const LANGUAGES = ["en", "es"] as const;

/** A language in which this is said, by its code. */
export type Language = (typeof LANGUAGES)[number];

/** What each language calls itself. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: "English", es: "Español" };

/**
 * The language of a locale, such as "es-MX" or "es_MX.UTF-8"; English for one that is not spoken here.
 */
export function languageOf(locale: string | undefined): Language {
  const code = /^[a-z]+/.exec((locale ?? "").toLowerCase())?.[0];
  return LANGUAGES.find((language) => language === code) ?? "en";
}
