import { quoted } from "../measure/cell-value";
import type { SheetReading } from "../reading/sheet-reading";
import { notComparedValues, type NotCompared } from "./as-specified";
import type { Setup } from "../reading/setup/setup";
import type { JudgedTest } from "./judged-test";
import type { Finding } from "./finding";

/** So many mixes are named in a sentence. */
const MOST_NAMED = 10;

/** What is said of a setup: lines that cannot be used, and what of it does not fit the sheet. */
export function setupFindings(
  { unfit, has }: SheetReading,
  tests: readonly JudgedTest[],
  setup: Setup | undefined,
  notCompared: Iterable<NotCompared>,
): readonly Finding[] {
  const wrong = (setup?.issues ?? []).map(({ id, values }) => {
    const weight = id === "setup-column-not-used" ? ("note" as const) : ("doubt" as const);
    return { ...OF_THE_SHEET, weight, say: id, values };
  });
  const inOtherUnits = [...notCompared].map((one) => ({
    ...OF_THE_SHEET,
    weight: "doubt" as const,
    say: "setup-cannot-compare" as const,
    values: notComparedValues(one),
  }));
  const unfitting = unfit.map(({ kept, several }) => ({
    ...OF_THE_SHEET,
    weight: several ? ("doubt" as const) : ("note" as const),
    say: several ? ("setup-header-of-several" as const) : ("setup-header-missing" as const),
    values: { header: quoted(kept.header) },
  }));
  const without = setup?.limitsAir ? unspecified(has("mix"), tests) : [];
  return [...wrong, ...unfitting, ...inOtherUnits, ...without];
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
