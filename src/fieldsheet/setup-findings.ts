import { quoted } from "../measure/cell-value";
import type { SheetReading } from "../reading/sheet-reading";
import type { Setup } from "../reading/setup";
import type { JudgedTest } from "./judged-test";
import type { Finding } from "./rule";

/** So many mixes are named in a sentence. */
const MOST_NAMED = 10;

/** What is said of a setup: lines that cannot be used, and what of it does not fit the sheet. */
export function setupFindings(
  { unfit, has }: SheetReading,
  tests: readonly JudgedTest[],
  setup: Setup | undefined,
): readonly Finding[] {
  const wrong = (setup?.issues ?? []).map(({ id, values }) => {
    return { ...OF_THE_SHEET, weight: "doubt" as const, say: id, values };
  });
  const unfitting = unfit.map(({ kept, several }) => ({
    ...OF_THE_SHEET,
    weight: several ? ("doubt" as const) : ("note" as const),
    say: several ? ("setup-header-of-several" as const) : ("setup-header-missing" as const),
    values: { header: quoted(kept.header) },
  }));
  return [...wrong, ...unfitting, ...(setup?.specifies ? unspecified(has("mix"), tests) : [])];
}

const OF_THE_SHEET = { record: null, field: null, rule: "setup-not-applied" } as const;

/** The tests that no specification of the setup is for, though they have no other. */
function unspecified(hasMix: boolean, tests: readonly JudgedTest[]): readonly Finding[] {
  const without = tests.filter(
    ({ blank, limits: { low, high } }) => !blank && low === undefined && high === undefined,
  );
  if (without.length === 0) return [];
  const note = { ...OF_THE_SHEET, weight: "note" as const };
  if (!hasMix) return [{ ...note, say: "setup-no-mix-column", values: {} }];
  const mixes = [...new Set(without.flatMap(({ values }) => values.mix ?? []))];
  if (mixes.length === 0) return [];
  const named = mixes.slice(0, MOST_NAMED).map((mix) => `“${quoted(mix)}”`);
  const list = [...named, ...(mixes.length > MOST_NAMED ? ["…"] : [])].join(", ");
  return [{ ...note, say: "setup-mixes-missing", values: { mixes: list } }];
}
