import type { FormCase } from "../form-case";
import { FORMS_ENGLISH } from "./forms-english";
import { FORMS_ENGLISH_IN_PARTS } from "./forms-english-in-parts";
import { FORMS_FRENCH } from "./forms-french";
import { FORMS_GERMAN } from "./forms-german";
import { FORMS_SPANISH } from "./forms-spanish";

/** The blind forms of each language. */
export const BLIND_FORMS: readonly {
  readonly language: string;
  readonly forms: readonly FormCase[];
}[] = [
  { language: "English", forms: [...FORMS_ENGLISH, ...FORMS_ENGLISH_IN_PARTS] },
  { language: "Spanish", forms: FORMS_SPANISH },
  { language: "French", forms: FORMS_FRENCH },
  { language: "German", forms: FORMS_GERMAN },
];
