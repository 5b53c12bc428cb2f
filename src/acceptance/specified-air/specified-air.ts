import type { AggregateSize } from "../../measure/aggregate-size";
import { quoted } from "../../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../../measure/issue";
import { implausible, QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";
import { ACI_211_1 } from "./aci-211-1";
import { ACI_318_19 } from "./aci-318-19";
import { CSA_A23_1 } from "./csa-a23-1";
import { DIN_1045_2 } from "./din-1045-2";
import { EN_206 } from "./en-206";
import type { ListedSize, SpecifiedAirTable } from "./table";
import { UFC_3_250_04FA } from "./ufc-3-250-04fa";

/** Every table that is held; the first is taken where none is named. */
export const SPECIFIED_AIR_TABLES: readonly SpecifiedAirTable[] = [
  ACI_318_19,
  ACI_211_1,
  CSA_A23_1,
  EN_206,
  DIN_1045_2,
  UFC_3_250_04FA,
];

/** What the air content is specified for. */
export interface Concrete {
  /** Nominal maximum size; needed where the table has sizes. */
  readonly aggregate: AggregateSize | undefined;
  readonly exposure: string;
  /** Specified strength, psi or MPa; nothing is lowered when absent. */
  readonly strength?: number;
}

/**
 * Specified total air content.
 *
 * @param source Name of the table; the first one held when absent.
 * @returns Air, % of the concrete; of a range the middle, of EN 206 the least. The issue
 *   `specified-air-source-unknown`, `exposure-not-in-table`, `size-not-in-table`, `argument-missing`, or
 *   one of `implausible`, in its place.
 */
export function specifiedAir(
  { aggregate, exposure, strength }: Concrete,
  source: string | undefined,
  system: UnitSystem,
): number | Issue {
  const table = tableNamed(source);
  if (isIssue(table)) return at("source", table);
  const row = airOfExposure(table, exposure);
  if (isIssue(row)) return at("exposure", row);
  const column = table.sizes ? columnOf(table, table.sizes, aggregate, row.length) : 0;
  if (isIssue(column)) return at("aggregate", column);
  const air = row[column]!;
  if (strength === undefined) return air;
  const wrong = at("strength", implausible(strength, QUANTITIES.strength, system));
  if (wrong) return wrong;
  const lower = table.lower && strength > table.lower.above[system] ? table.lower.by : 0;
  return exact(air - lower);
}

const letters = (name: string) => name.toLowerCase().replace(/[^a-z0-9]/g, "");

function tableNamed(source: string | undefined): SpecifiedAirTable | Issue {
  const named =
    source === undefined
      ? SPECIFIED_AIR_TABLES[0]
      : SPECIFIED_AIR_TABLES.find(({ name }) => letters(name) === letters(source));
  if (named) return named;
  const names = SPECIFIED_AIR_TABLES.map(({ name }) => name).join(", ");
  return issue("specified-air-source-unknown", { value: quoted(source), names });
}

function airOfExposure(table: SpecifiedAirTable, exposure: string): readonly number[] | Issue {
  const exposures = Object.keys(table.air);
  const asked = letters(exposure);
  const named = exposures.find((name) => letters(name) === asked || lastWord(name) === asked);
  if (named) return table.air[named]!;
  return issue("exposure-not-in-table", {
    value: quoted(exposure),
    source: table.name,
    exposures: exposures.join(", "),
  });
}

/** "category 2" may be given as 2. */
function lastWord(exposure: string): string {
  return /^category (\d)$/.exec(exposure)?.[1] ?? letters(exposure);
}

function columnOf(
  table: SpecifiedAirTable,
  sizes: readonly ListedSize[],
  aggregate: AggregateSize | undefined,
  columns: number,
): number | Issue {
  if (!aggregate) return issue("argument-missing");
  const held = sizes.slice(0, columns);
  const column = held.findIndex((listed) => listed[aggregate.unit] === aggregate.size);
  if (column >= 0) return column;
  return issue("size-not-in-table", {
    value: `${aggregate.size} ${aggregate.unit}`,
    source: table.name,
    sizes: held.map(({ written }) => written).join(", "),
  });
}
