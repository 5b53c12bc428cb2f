import type { Language } from "./language";

/** The files of the build that declare the worksheet functions, each with their help in one language. */
export const FUNCTIONS_FILES = {
  en: "functions.json",
  es: "functions-es.json",
} as const satisfies Record<Language, string>;
