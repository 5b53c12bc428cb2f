import type { FieldId } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { NotLookedAt } from "./check-result";
import type { JudgedTest } from "./judged-test";

/** What the method asks for, and the field that would show it. */
const ASKED_FOR: readonly (readonly [what: NotLookedAt, field: FieldId])[] = [
  ["second reading", "second"],
  ["alcohol", "alcohol"],
  ["foam", "foam"],
  ["time to settle", "settle"],
  ["undisturbed concrete", "packed"],
  ["leak", "leak"],
];

/** What could not be looked at, because the sheet does not record it and nobody gave it. */
export function notLookedAt(sheet: SheetReading, tests: readonly JudgedTest[]): NotLookedAt[] {
  const missing = ASKED_FOR.filter(([, field]) => !sheet.has(field)).map(([what]) => what);
  const limited = tests.some(
    ({ limits: { low, high } }) => low !== undefined || high !== undefined,
  );
  return limited ? missing : [...missing, "limits"];
}
