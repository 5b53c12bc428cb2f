import type { HeaderCase } from "../header-case";
import { ENGLISH_AS_TYPED } from "./english-as-typed";
import { ENGLISH_DATABASES } from "./english-databases";
import { ENGLISH_LABORATORIES } from "./english-laboratories";
import { ENGLISH_PROCEDURES } from "./english-procedures";
import { ENGLISH_PRODUCERS } from "./english-producers";
import { ENGLISH_SITES } from "./english-sites";
import { FRENCH } from "./french";
import { GERMAN } from "./german";
import {
  FRENCH_PROCEDURES,
  GERMAN_PROCEDURES,
  SPANISH_PROCEDURES,
} from "./other-languages-procedures";
import { SPANISH_LABORATORIES } from "./spanish-laboratories";
import { SPANISH_SITES } from "./spanish-sites";

/** The second blind tables of each language. */
export const SECOND_BLIND_TABLES: readonly {
  readonly language: string;
  readonly tables: readonly HeaderCase[];
}[] = [
  {
    language: "English",
    tables: [
      ...ENGLISH_DATABASES,
      ...ENGLISH_LABORATORIES,
      ...ENGLISH_SITES,
      ...ENGLISH_PRODUCERS,
      ...ENGLISH_AS_TYPED,
      ...ENGLISH_PROCEDURES,
    ],
  },
  {
    language: "Spanish",
    tables: [...SPANISH_LABORATORIES, ...SPANISH_SITES, ...SPANISH_PROCEDURES],
  },
  { language: "French", tables: [...FRENCH, ...FRENCH_PROCEDURES] },
  { language: "German", tables: [...GERMAN, ...GERMAN_PROCEDURES] },
];
