import { FIELDS, nameInSetup, type FieldId } from "../../src/reading/fields";
import type { Weight } from "../../src/fieldsheet/finding";
import type { Rule } from "../../src/fieldsheet/rule";
import { RULES } from "../../src/fieldsheet/rules";
import { ENGLISH } from "../../src/reading/vocabulary/english";
import { catalogue } from "../../src/messages/catalogue";
import { page, sentence, table } from "./markdown";

const WEIGHT_MEANS: Readonly<Record<Weight, string>> = {
  void: "the test does not stand",
  error: "the record is wrong",
  doubt: "look at it",
  note: "good to know",
};

/** The reference page of the rules of the check, from the rules themselves. */
export function rulesPage(): string {
  const weights = Object.keys(WEIGHT_MEANS) as Weight[];
  return page(
    "# Rules of the check",
    "Every rule that looks at a field sheet: what it weighs, the columns that it needs, what it rests on and how far that is trusted, and what it says. A rule is silent where its columns are not in the sheet. Results support, and never replace, the project specification, the local codes and the judgement of the licensed engineer and the certified technician.",
    "“From memory” means that the standard was not read for this project; compare the value with the standard in force before you rely on it. “Common practice” has no single source. “Our own” is a choice of this project.",
    weights
      .map((weight) => `- **${weight}**, ${WEIGHT_MEANS[weight]}: ${idsOf(weight)}`)
      .join("\n"),
    ...weights.flatMap((weight) => [
      `## ${weight.replace(/^./, (letter) => letter.toUpperCase())}: ${WEIGHT_MEANS[weight]}`,
      ...RULES.filter((rule) => rule.weight === weight).flatMap(ruleSection),
    ]),
    "`reported-air-wrong` names each slip that explains the number, and `slip-in-column` one that the whole column makes: see [diagnosis.md](diagnosis.md).",
    "## Headers that are recognised",
    "A unit or a remark in brackets, capitals, and words such as “of the” make no difference.",
    table(
      ["column", "read as", "headers"],
      Object.entries(FIELDS).map(([field, { kind }]) => [
        nameInSetup(field as FieldId),
        kind,
        ENGLISH.headings[field as FieldId]!.replace(/\s+/g, " "),
      ]),
    ),
  );
}

function idsOf(weight: Weight): string {
  const ids = RULES.filter((rule) => rule.weight === weight).map(({ id }) => id);
  return ids.map((id) => `[${id}](#${id})`).join(", ");
}

function ruleSection({ id, needs, needsOneOf, basis, says }: Rule): string[] {
  return [
    `### ${id}`,
    `Looks at: ${columnsOf(needs, needsOneOf)}.`,
    `Rests on: ${basis}`,
    ...says.map((said) => `Says: “${sentence(catalogue[said])}”`),
  ];
}

function columnsOf(needs: readonly FieldId[], needsOneOf: readonly FieldId[] = []): string {
  const label = (field: FieldId) => nameInSetup(field);
  const all = needs.map(label).join(", ");
  const oneOf = needsOneOf.length > 0 ? `one of ${needsOneOf.map(label).join(", ")}` : "";
  return [all, oneOf].filter((part) => part !== "").join("; ") || "every test";
}
