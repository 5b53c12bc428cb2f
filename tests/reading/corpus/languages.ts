import { ENGLISH_HELD_OUT } from "./english-held-out";
import { ENGLISH_WORKED } from "./english-worked";
import { FRENCH_HELD_OUT } from "./french-held-out";
import { FRENCH_WORKED } from "./french-worked";
import { GERMAN_HELD_OUT } from "./german-held-out";
import { GERMAN_WORKED } from "./german-worked";
import { SPANISH_HELD_OUT } from "./spanish-held-out";
import { SPANISH_WORKED } from "./spanish-worked";
import type { HeaderCase } from "./header-case";

/** The tables of each language: those to work with, and those kept apart. */
export const LANGUAGES: readonly {
  readonly language: string;
  readonly worked: readonly HeaderCase[];
  readonly heldOut: readonly HeaderCase[];
}[] = [
  { language: "English", worked: ENGLISH_WORKED, heldOut: ENGLISH_HELD_OUT },
  { language: "Spanish", worked: SPANISH_WORKED, heldOut: SPANISH_HELD_OUT },
  { language: "French", worked: FRENCH_WORKED, heldOut: FRENCH_HELD_OUT },
  { language: "German", worked: GERMAN_WORKED, heldOut: GERMAN_HELD_OUT },
];
