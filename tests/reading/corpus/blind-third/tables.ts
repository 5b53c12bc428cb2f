import type { HeaderCase } from "../header-case";
import { ENGLISH_CREWS } from "./english-crews";
import { ENGLISH_OFFICES } from "./english-offices";
import { FRENCH_THIRD, GERMAN_THIRD } from "./french-and-german";
import { SPANISH_THIRD } from "./spanish";

/** The third blind tables of each language. */
export const THIRD_BLIND_TABLES: readonly {
  readonly language: string;
  readonly tables: readonly HeaderCase[];
}[] = [
  { language: "English", tables: [...ENGLISH_CREWS, ...ENGLISH_OFFICES] },
  { language: "Spanish", tables: SPANISH_THIRD },
  { language: "French", tables: FRENCH_THIRD },
  { language: "German", tables: GERMAN_THIRD },
];
