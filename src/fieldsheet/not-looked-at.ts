import { phrase, say } from "../messages/catalogue";
import type { FieldId } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import { mayStandUnread } from "../reading/may-stand-unread";
import type { JudgedTest } from "./judged-test";

/** What the method asks for, and the field that would show it. */
const ASKED_FOR = [
  ["second-reading", "second"],
  ["alcohol", "alcohol"],
  ["foam", "foam"],
  ["settle", "settle"],
  ["packed", "packed"],
  ["leak", "leak"],
] as const satisfies readonly (readonly [what: string, field: FieldId])[];

/** Fields that say between which limits the air has to lie. */
const LIMITS: readonly FieldId[] = ["target", "tolerance", "low", "high"];

/** Something that the method asks for and the sheet does not record; limits go last. */
export type NotLookedAt = (typeof ASKED_FOR)[number][0] | "limits" | "limits-unread";

/** What could not be looked at, because the sheet does not record it and nobody gave it. */
export function notLookedAt(sheet: SheetReading, tests: readonly JudgedTest[]): NotLookedAt[] {
  const missing = ASKED_FOR.filter(
    ([, field]) => !sheet.has(field) && !mayStandUnread(sheet, field),
  ).map(([what]) => what);
  const limited = tests.some(
    ({ limits: { low, high } }) => low !== undefined || high !== undefined,
  );
  if (limited) return missing;
  const unread = sheet.unread.some(({ mayBe }) => mayBe.some((field) => LIMITS.includes(field)));
  return [...missing, unread ? "limits-unread" : "limits"];
}

/** The same as a sentence, which stands beside "nothing was found"; `undefined` where all was looked at. */
export function notLookedAtSentence(what: readonly NotLookedAt[]): string | undefined {
  if (what.length === 0) return undefined;
  return say("not-looked-at", {
    what: { all: what.map((each) => phrase(`looked-${each}`)) },
  });
}
