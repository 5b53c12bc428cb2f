import { phrase } from "../messages/catalogue";
import type { Value } from "../messages/sentence";
import { quoted } from "../measure/cell-value";
import type { Measured } from "../measure/measured";
import { QUANTITIES } from "../measure/plausible";
import { systemOf, type ValueOf } from "../measure/system-of-value";
import { slumpLimit } from "../methods/slump/slump-limit";
import { fieldName, type FieldId } from "../reading/fields";
import type { FieldRecord, FieldValues } from "../reading/record";
import { withValues } from "../reading/read-tests";
import type { MixSpecification } from "../reading/setup/mix-line";
import type { Setup } from "../reading/setup/setup";
import type { SheetReading } from "../reading/sheet-reading";

/** Fields that say one thing together: a test that has one of them takes none of the others from the setup. */
const TOGETHER: readonly (readonly FieldId[])[] = [
  ["densityTarget", "densityLow", "densityHigh"],
  ["nominalSlump", "slumpLow", "slumpHigh"],
  ["temperatureLow", "temperatureHigh"],
];
const GROUP_OF = new Map(
  TOGETHER.flatMap((group) => group.map((field) => [field, group] as const)),
);

/** Limits of a mix that cannot be compared with what was measured, because their units cannot be told. */
export interface NotCompared {
  readonly mix: string;
  readonly field: FieldId;
  readonly value: Value;
  readonly limit: Value;
}

/** The tests of a sheet with what the setup gives for their mix, or for all, where they have none of their own. */
export interface AsSpecified {
  readonly complete: (record: FieldRecord) => FieldRecord;
  /** The fields that the setup gives for some test. */
  readonly given: ReadonlySet<FieldId>;
  /** Once for each mix and quantity; filled by `complete`. */
  readonly notCompared: ReadonlyMap<string, NotCompared>;
}

/** Completes the tests of a sheet from a setup. */
export function asSpecified(sheet: SheetReading, setup: Setup | undefined): AsSpecified {
  const notCompared = new Map<string, NotCompared>();
  const everywhere = Object.keys(setup?.everywhere ?? {}) as FieldId[];
  const given = new Set([...(setup?.fields ?? []), ...everywhere]);
  if (!setup || given.size === 0) return { complete: (record) => record, given, notCompared };
  const densityUnit = sheet.columns.density?.unit;
  const complete = (record: FieldRecord): FieldRecord => {
    if (record.blank) return record;
    const { mix } = record.values;
    const specified = mix === undefined ? undefined : setup.specificationFor(mix);
    const more: Record<string, unknown> = {};
    for (const [values, own] of [
      [specified?.values ?? {}, specified],
      [setup.everywhere, undefined],
    ] as const) {
      for (const field of Object.keys(values) as FieldId[]) {
        const group = GROUP_OF.get(field) ?? [field];
        const isSaid = group.some((each) => says(record, each) || (each in more && !own));
        if (!isSaid && (!own || comparable(record, own, group))) more[field] = values[field];
      }
    }
    const found = Object.keys(more).length > 0;
    return found ? withValues(record, more) : record;
  };
  return { complete, given, notCompared };

  /** Whether it can be told that limits of a mix are in the unit of what was measured. */
  function comparable(
    { values }: FieldRecord,
    specified: MixSpecification,
    group: readonly FieldId[],
  ): boolean {
    const field = MEASURED_FIELD.get(group);
    if (!field) return true;
    const measured =
      field === "density"
        ? values.density !== undefined && { value: values.density, unit: densityUnit }
        : values[field];
    if (!measured) return true;
    const limits = group.flatMap((each) => limitOf(specified, each) ?? []);
    const limitIs = (value: number) => (field === "slump" ? slumpLimit(value) : QUANTITIES[field]);
    const all = limits.map((limit): ValueOf => [limit, limitIs(limit.value)]);
    if (systemOf([measured, QUANTITIES[field]], ...all)) return true;
    const key = `${specified.mix}\n${field}`;
    if (notCompared.has(key)) return false;
    notCompared.set(key, {
      mix: quoted(specified.mix),
      field,
      value: written(measured),
      limit: { all: limits.map(written) },
    });
    return false;
  }
}

type MeasuredField = "density" | "slump" | "concreteTemperature";

const MEASURED_FIELD = new Map<readonly FieldId[], MeasuredField>([
  [TOGETHER[0]!, "density"],
  [TOGETHER[1]!, "slump"],
  [TOGETHER[2]!, "concreteTemperature"],
]);

function limitOf({ values, densityUnit }: MixSpecification, field: FieldId): Measured | undefined {
  const value = values[field];
  if (typeof value === "number") return { value, unit: densityUnit };
  return value as Measured | undefined;
}

function written({ value, unit }: Measured): Value {
  return unit === undefined ? value : phrase("amount-in-unit", { amount: value, unit });
}

function says({ values, unreadable }: FieldRecord, field: keyof FieldValues): boolean {
  return values[field] !== undefined || unreadable[field] !== undefined;
}

/** The sentence values of what was not compared. */
export function notComparedValues({ mix, field, value, limit }: NotCompared) {
  return { mix, field: fieldName(field), value, limit };
}
