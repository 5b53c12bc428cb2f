import type { HeaderCase } from "../header-case";
import { ENGLISH_AGENCIES } from "./english-agencies";
import { ENGLISH_AS_TYPED } from "./english-as-typed";
import { ENGLISH_LABORATORIES } from "./english-laboratories";
import { ENGLISH_PRODUCERS } from "./english-producers";
import { FRENCH_EUROPE } from "./french-europe";
import { FRENCH_QUEBEC } from "./french-quebec";
import { GERMAN_ALPINE } from "./german-alpine";
import { GERMAN_GERMANY } from "./german-germany";
import { FRENCH_AS_TYPED, GERMAN_AS_TYPED, SPANISH_AS_TYPED } from "./other-languages-as-typed";
import { SPANISH_AMERICAS } from "./spanish-americas";
import { SPANISH_LABORATORIES } from "./spanish-laboratories";
import type { SurroundedCase } from "./surrounded";
import { WHOLE_SHEETS } from "./whole-sheets";

/** The blind tables of each language. */
export const BLIND_TABLES: readonly {
  readonly language: string;
  readonly tables: readonly HeaderCase[];
}[] = [
  {
    language: "English",
    tables: [
      ...ENGLISH_AGENCIES,
      ...ENGLISH_LABORATORIES,
      ...ENGLISH_PRODUCERS,
      ...ENGLISH_AS_TYPED,
      ...tablesIn(WHOLE_SHEETS.ENGLISH),
    ],
  },
  {
    language: "Spanish",
    tables: [
      ...SPANISH_AMERICAS,
      ...SPANISH_LABORATORIES,
      ...SPANISH_AS_TYPED,
      ...tablesIn(WHOLE_SHEETS.SPANISH),
    ],
  },
  {
    language: "French",
    tables: [
      ...FRENCH_QUEBEC,
      ...FRENCH_EUROPE,
      ...FRENCH_AS_TYPED,
      ...tablesIn(WHOLE_SHEETS.FRENCH),
    ],
  },
  {
    language: "German",
    tables: [
      ...GERMAN_GERMANY,
      ...GERMAN_ALPINE,
      ...GERMAN_AS_TYPED,
      ...tablesIn(WHOLE_SHEETS.GERMAN),
    ],
  },
];

/** The tables of whole sheets. */
function tablesIn(sheets: readonly SurroundedCase[]): HeaderCase[] {
  return sheets.map(({ table }) => table);
}
