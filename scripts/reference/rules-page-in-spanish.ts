import { WEIGHTS, type Weight } from "../../src/fieldsheet/finding";
import type { Rule } from "../../src/fieldsheet/rule";
import { RULES } from "../../src/fieldsheet/rules";
import { spanish } from "../../src/messages/spanish";
import type { FieldId } from "../../src/reading/fields";
import { page, sentence, table } from "./markdown";

const WEIGHT_MEANS: Readonly<Record<Weight, string>> = {
  void: "la prueba no vale",
  error: "el registro está mal",
  doubt: "mírelo",
  note: "es bueno saberlo",
};

/** The rules of the check in Spanish: what each is called, what it looks at and what it says. */
export function rulesPageInSpanish(): string {
  return page(
    "# Reglas de la revisión",
    "Cada regla que mira una hoja de campo: cuánto pesa, las columnas que necesita y lo que dice; “…” está donde la frase lleva un valor. Una regla calla si sus columnas no están en la hoja. En qué se basa cada una, y cuánto se confía en ello, está en [rules](rules.md), en inglés. El nombre en inglés es el que muestran las celdas, el mismo en todos los idiomas.",
    "Los resultados apoyan, y nunca sustituyen, la especificación del proyecto, los reglamentos locales ni el criterio del ingeniero con licencia y del técnico certificado.",
    ...WEIGHTS.flatMap((weight) => [
      `## ${capital(spanish[`word-${weight}`] as string)}: ${WEIGHT_MEANS[weight]}`,
      ...RULES.filter((rule) => rule.weight === weight).flatMap(section),
    ]),
    "## Nombres de las columnas",
    table(
      ["en la configuración", "en español"],
      Object.entries(spanish)
        .filter(([id]) => id.startsWith("field-"))
        .map(([id, name]) => [id.replace("field-", ""), sentence(name)]),
    ),
  );
}

function section({ id, needs, needsOneOf = [], says }: Rule): string[] {
  const oneOf = needsOneOf.length > 0 ? [`una de ${needsOneOf.map(nameOf).join(", ")}`] : [];
  const looksAt = [...(needs.length > 0 ? [needs.map(nameOf).join(", ")] : []), ...oneOf];
  return [
    `### ${id}`,
    `${capital(sentence(spanish[`rule-${id}` as keyof typeof spanish]))}. Mira: ${looksAt.join("; ") || "todas las pruebas"}. [En qué se basa](rules.md#${id})`,
    ...says.map((said) => `Dice: “${sentence(spanish[said])}”`),
  ];
}

function nameOf(field: FieldId): string {
  return sentence(spanish[`field-${field}`]);
}

function capital(words: string): string {
  return words.replace(/^./, (letter) => letter.toUpperCase());
}
