import type { HeaderCase } from "../header-case";
import { ENGLISH_FOURTH } from "./english";
import { FRENCH_FOURTH } from "./french";
import { GERMAN_FOURTH } from "./german";
import { SPANISH_FOURTH } from "./spanish";

/** The fourth blind tables of each language. */
export const FOURTH_BLIND_TABLES: readonly {
  readonly language: string;
  readonly tables: readonly HeaderCase[];
}[] = [
  { language: "English", tables: ENGLISH_FOURTH },
  { language: "Spanish", tables: SPANISH_FOURTH },
  { language: "French", tables: FRENCH_FOURTH },
  { language: "German", tables: GERMAN_FOURTH },
];
