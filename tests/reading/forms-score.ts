import { isIssue } from "../../src/measure/issue";
import type { FieldId } from "../../src/reading/fields";
import { findTestsIn, readTestsInSteps } from "../../src/reading/read-sheet";
import type { SheetReading } from "../../src/reading/sheet-reading";
import type { FormCase } from "./corpus/form-case";
import { NEWER_THAN_BLIND } from "./corpus-score";

/** How the values of a form came out. */
export interface FormScore {
  right: number;
  readonly missed: string[];
  readonly wrong: string[];
}

function readingOf(cells: FormCase["sheets"][number]["cells"]): SheetReading | undefined {
  const found = findTestsIn(cells);
  if (isIssue(found)) return undefined;
  const steps = readTestsInSteps(found);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** Compares where each value of each test is read with where a careful reader finds it. */
export function scoreOfForm(form: FormCase): FormScore {
  const score: FormScore = { right: 0, missed: [], wrong: [] };
  for (const { name, cells } of form.sheets) {
    const expected = form.tests.filter(({ sheet }) => sheet === name);
    const reading = readingOf(cells);
    const read = (reading?.records ?? []).filter(({ blank }) => !blank);
    const withReading = read.filter(({ record }) =>
      (["first", "second", "final", "air"] as const).some(
        (field) => reading!.cell(record, field) !== null,
      ),
    );
    if (withReading.length > expected.length) score.wrong.push(`${name}: ${read.length} tests`);
    expected.forEach(({ values }, i) => {
      const row = withReading[i]?.record;
      for (const [field, at] of Object.entries(values) as [FieldId, typeof values.air][]) {
        const what = `${name} ${i} ${field}`;
        if (row === undefined || !reading!.has(field)) {
          if (at!.value !== null && at!.value !== "") score.missed.push(what);
          continue;
        }
        const place = reading!.placeOf(row, field);
        const isThere = place.row === at!.row && place.column === at!.column;
        const isBlank = at!.value === null || at!.value === "";
        if (isThere && (isBlank || reading!.cell(row, field) === at!.value)) score.right++;
        else if (reading!.cell(row, field) === null) {
          if (!isBlank) score.missed.push(what);
        } else score.wrong.push(`${what}: ${String(reading!.cell(row, field))}`);
      }
      for (const field of Object.keys(reading?.columns ?? {}) as FieldId[]) {
        const cell = row === undefined ? null : reading!.cell(row, field);
        if (!values[field] && !NEWER_THAN_BLIND.has(field) && cell !== null && cell !== "") {
          score.wrong.push(`${name} ${i} ${field} is none: ${String(cell)}`);
        }
      }
    });
  }
  return score;
}
