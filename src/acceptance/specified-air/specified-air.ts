import type { AggregateSize } from "../../measure/aggregate-size";
import { plausible, QUANTITIES } from "../../measure/plausible";
import { Problem } from "../../measure/problem";
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
 * @returns Air, % of the concrete; of a range the middle, of EN 206 the least.
 * @throws Problem `specified-air-source-unknown`, `exposure-not-in-table`, `size-not-in-table`,
 *   `argument-missing` with the argument's name in `where`, and those of `plausible`.
 */
export function specifiedAir(
  { aggregate, exposure, strength }: Concrete,
  source: string | undefined,
  system: UnitSystem,
): number {
  const table = tableNamed(source);
  const row = airOfExposure(table, exposure);
  const air = table.sizes ? row[columnOf(table, table.sizes, aggregate, row.length)]! : row[0]!;
  if (strength === undefined) return air;
  plausible(strength, QUANTITIES.strength, system);
  const lower = table.lower && strength > table.lower.above[system] ? table.lower.by : 0;
  return exact(air - lower);
}

const letters = (name: string) => name.toLowerCase().replace(/[^a-z0-9]/g, "");

function tableNamed(source: string | undefined): SpecifiedAirTable {
  const named =
    source === undefined
      ? SPECIFIED_AIR_TABLES[0]
      : SPECIFIED_AIR_TABLES.find(({ name }) => letters(name) === letters(source));
  if (named) return named;
  const names = SPECIFIED_AIR_TABLES.map(({ name }) => name).join(", ");
  throw new Problem("specified-air-source-unknown", {
    where: "source",
    value: source ?? "",
    names,
  });
}

function airOfExposure(table: SpecifiedAirTable, exposure: string): readonly number[] {
  const exposures = Object.keys(table.air);
  const asked = letters(exposure);
  const named = exposures.find((name) => letters(name) === asked || lastWord(name) === asked);
  if (named) return table.air[named]!;
  throw new Problem("exposure-not-in-table", {
    where: "exposure",
    value: exposure,
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
): number {
  if (!aggregate) throw new Problem("argument-missing", { where: "aggregate" });
  const held = sizes.slice(0, columns);
  const column = held.findIndex((listed) => listed[aggregate.unit] === aggregate.size);
  if (column >= 0) return column;
  throw new Problem("size-not-in-table", {
    where: "aggregate",
    value: `${aggregate.size} ${aggregate.unit}`,
    source: table.name,
    sizes: held.map(({ written }) => written).join(", "),
  });
}
