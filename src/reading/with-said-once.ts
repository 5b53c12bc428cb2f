import { folded } from "../measure/folded";
import type { BlockPlace } from "./block-place";
import type { FieldId } from "./fields";
import { withValues } from "./read-tests";
import type { FieldValues } from "./record";
import { AIR_LIMITS, OF_A_MIX, type SaidOnce } from "./said-once";
import type { SheetReading } from "./sheet-reading";
import { languagesOf, understand } from "./words-in-header";

/** The air of every test rests on these, whatever was meant by them. */
const CHANGE_THE_AIR: ReadonlySet<FieldId> = new Set<FieldId>(["alcohol", "cups"]);
/** What a sheet may specify besides the air. */
const SPECIFIED_TOO: readonly FieldId[] = ["slump", "concreteTemperature", "density"];

/**
 * The tests of a table with what stands once for all of them: it holds where no column of the table says it.
 * What stands there and may be meant otherwise is asked about.
 *
 * @param once What stands above the table and, if need be, below it; a row of that is no test.
 */
export function withSaidOnce(read: SheetReading, once: SaidOnce): SheetReading {
  const hasLimits = [...AIR_LIMITS].some(read.has);
  const isSaidBelow = (field: FieldId) => read.has(field) || (AIR_LIMITS.has(field) && hasLimits);
  const mayBeOfAnother = (field: FieldId, header: string) =>
    AIR_LIMITS.has(field) && SPECIFIED_TOO.some(read.has) && !speaksOfAir(header);
  const said = once.said.filter(({ field }) => !isSaidBelow(field));
  const taken = said.filter(({ field, header }) => !mayBeOfAnother(field, header));
  const asked = [
    ...said
      .filter((each) => !taken.includes(each))
      .map((each) => ({ ...each, fields: [each.field] })),
    ...once.open.filter(({ fields }) => !fields.some(isSaidBelow)),
  ];
  const isTest = (record: number) => read.records[record]?.blank === false;
  const open = asked.map(({ fields, header, place }) => {
    const decides = fields.some((field) => CHANGE_THE_AIR.has(field));
    const because = { say: "once-not-read", values: {} } as const;
    return { index: place.column, place, header, mayBe: fields, decides, because, touches: isTest };
  });
  const unread = [...read.unread, ...open];
  if (taken.length === 0) return { ...read, unread };
  const byField = new Map(taken.map((each) => [each.field, each]));
  const valuesOf = (some: typeof taken): FieldValues =>
    Object.fromEntries(some.map(({ field, value }) => [field, value]));
  const ofAll = valuesOf(taken);
  const ofOthers = valuesOf(taken.filter(({ field }) => !OF_A_MIX.has(field)));
  const mix = once.said.find(({ field }) => field === "mix")?.value;
  const isOfMix = (own: string | undefined) =>
    mix === undefined ||
    !read.has("mix") ||
    folded(own ?? "").trim() === folded(String(mix)).trim();
  const rowsOfLabels = new Set(taken.map(({ place }) => place.row));
  const columns = Object.fromEntries(taken.map(({ field, column }) => [field, column]));
  return {
    ...read,
    unread,
    columns: { ...read.columns, ...columns },
    records: read.records.map((test) => {
      if (test.blank) return test;
      if (rowsOfLabels.has(read.placeOf(test.record, null).row)) return { ...test, blank: true };
      return withValues(test, isOfMix(test.values.mix) ? ofAll : ofOthers);
    }),
    saidOnce: [
      ...(read.saidOnce ?? []),
      ...taken.map(({ header, place }) => ({ header, place })),
    ].sort(byPlace),
    has: (field) => byField.has(field) || read.has(field),
    cell: (record, field) => byField.get(field)?.cell ?? read.cell(record, field),
    placeOf: (record, field) => {
      const own = field === null ? undefined : byField.get(field);
      return own?.place ?? read.placeOf(record, field);
    },
  };
}

function byPlace({ place: a }: { place: BlockPlace }, { place: b }: { place: BlockPlace }): number {
  return a.row - b.row || a.column - b.column;
}

function speaksOfAir(header: string): boolean {
  const { words } = understand(header, languagesOf([header]));
  return words.some(({ terms }) => terms.includes("air"));
}
