import type { CheckResult } from "../../fieldsheet/check-result";
import { RULES } from "../../fieldsheet/rules";
import { FIELDS, type FieldId } from "../../reading/fields";

/** What a check could not look at, since the sheet has no place for it: labels of fields. */
export interface NotChecked {
  /** What could void a test or make its record wrong. */
  readonly grave: readonly string[];
  readonly others: readonly string[];
  /** Whether no test has limits to be compared with. */
  readonly limits: boolean;
}

/** What was not checked, from what each rule needs. */
export function notChecked({ columns, rows }: CheckResult): NotChecked {
  const missing = (heavy: boolean) =>
    RULES.filter(({ weight }) => (weight === "void" || weight === "error") === heavy).flatMap(
      ({ needs, needsOneOf = [] }) => [
        ...needs.filter((field) => !columns[field]),
        ...(needsOneOf.some((field) => columns[field]) ? [] : needsOneOf),
      ],
    );
  const grave = new Set(missing(true));
  const others = new Set(missing(false).filter((field) => !grave.has(field)));
  const compared = ({ judged: { limits } }: (typeof rows)[number]) =>
    limits.low !== undefined || limits.high !== undefined;
  return { grave: labels(grave), others: labels(others), limits: !rows.some(compared) };
}

function labels(fields: Iterable<FieldId>): string[] {
  return [...fields].map((field) => FIELDS[field].label);
}
