import { recogniseColumns } from "../columns";
import { FIELDS, nameInSetup, type FieldId } from "../fields";
import { named } from "./heading-words";

/** A column that is to be left alone, in four languages. */
const NOT_OURS = `not ours, ignore, none; no es nuestra, no es nuestro, ignorar; pas à nous, ignorer;
  nicht unsere, nicht von uns, ignorieren`;

/** A column of which a setting was taken back. */
const AS_FOUND = "as found; como se encontró; comme trouvé; wie gefunden";
const TAKEN_BACK = new Set(AS_FOUND.split(";").map(named));

/** Whether a text says that a column is to be taken as it is found. */
export function isAsFound(text: string): boolean {
  return TAKEN_BACK.has(named(text));
}

const BY_NAME = new Map<string, FieldId | "not ours">([
  ...NOT_OURS.split(/[,;]/).map((words) => [named(words), "not ours"] as const),
  ...(Object.keys(FIELDS) as FieldId[]).flatMap((id) => [
    [named(id), id] as const,
    [named(nameInSetup(id)), id] as const,
  ]),
]);

/** A field as people name it, with the unit where that is written behind it. */
export interface NamedField {
  readonly field: FieldId | "not ours";
  readonly unit?: string;
}

/**
 * The field that a text names: by our own name for it, or as a column of it is headed in English,
 * Spanish, French or German.
 */
export function fieldNamed(text: string): NamedField | undefined {
  const own = BY_NAME.get(named(text));
  if (own) return { field: own };
  const [found] = Object.entries(recogniseColumns([text]));
  if (!found) return undefined;
  const [field, { unit }] = found;
  return { field: field as FieldId, ...(unit !== undefined && { unit }) };
}
