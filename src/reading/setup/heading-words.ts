import { folded } from "../../measure/folded";

/** Headings of a setup that are no words of a field sheet. */
export type OwnHeading =
  "header" | "taken for" | "unit" | "setting" | "value" | "exposure" | "source" | "note";

/** How they are called in English, Spanish, French and German. */
const WORDS: Readonly<Record<OwnHeading, string>> = {
  header:
    "header, column, label; encabezado, columna, título; en-tête, colonne; Überschrift, Spalte",
  "taken for":
    "taken for, read as; tomado como, se lee como; pris pour, lu comme; gelesen als, gilt als",
  unit: "unit, units; unidad, unidades; unité, unités; Einheit, Einheiten",
  setting: "setting; ajuste, parámetro; réglage, paramètre; Einstellung",
  value: "value; valor; valeur; Wert",
  exposure: `exposure, exposure class; exposición, clase de exposición; exposition, classe d’exposition;
    Expositionsklasse`,
  source: "source; fuente, origen; référence; Quelle",
  /** What stands there is for people. */
  note: `note, notes, remark, remarks, comment; nota, notas, observaciones, comentario; remarque,
    remarques, commentaire; Bemerkung, Bemerkungen, Kommentar, Notiz`,
};

const HEADINGS = new Map(
  (Object.entries(WORDS) as [OwnHeading, string][]).flatMap(([heading, words]) =>
    words.split(/[,;]/).map((word) => [named(word), heading] as const),
  ),
);

/** The heading that a cell is, in any of the four languages. */
export function ownHeading(text: string): OwnHeading | undefined {
  return HEADINGS.get(named(text));
}

/** A text as names are compared: letters large or small, accents, spaces and a colon behind it aside. */
export function named(text: string): string {
  return folded(text).replace(/[’']/g, "'").replace(/\s+/g, " ").trim().replace(/ ?:$/, "");
}
