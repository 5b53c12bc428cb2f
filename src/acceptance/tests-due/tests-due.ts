import { firstSpelling } from "../../measure/first-spelling";
import { issue, type Issue } from "../../measure/issue";
import { exact } from "../../measure/rounding";
import type { UnitSystem } from "../../measure/unit-system";
import type { TestingRule } from "./rules";

const MINUTES_IN_AN_HOUR = 60;

/** One load, or several placed together. */
export interface Placed {
  /** Day, as a spreadsheet counts it. */
  readonly day: number;
  /** Minutes since midnight. */
  readonly minute?: number;
  readonly mix: string;
  /** yd³ or m³. */
  readonly volume?: number;
  /** Area of slabs or walls, ft² or m². */
  readonly area?: number;
  /** How many tests were made of it. */
  readonly tests: number;
}

/** What was due of one mix on one day. */
export interface TestsDue {
  readonly day: number;
  readonly mix: string;
  readonly volume: number;
  readonly required: number;
  readonly made: number;
  /** Never below 0. */
  readonly missing: number;
}

/**
 * Tests required, made and missing, for each day and mix in the order in which they first appear.
 *
 * @param placed Everything that was placed, tested or not.
 * @returns A line for each day and mix, or the issue `volumes-needed` or `times-needed` where the rule
 *   counts by volume or by hours and one is missing: nothing is taken for 0.
 * @see TESTING_RULES for what each rule rests on.
 */
export function testsDue(
  placed: readonly Placed[],
  rule: TestingRule,
  system: UnitSystem,
): readonly TestsDue[] | Issue {
  if (rule.eachVolume && placed.some(({ volume }) => volume === undefined)) {
    return issue("volumes-needed", { rule: rule.name });
  }
  const groups = new Map<string, Placed[]>();
  const mixOf = firstSpelling();
  for (const load of placed) {
    const mix = mixOf(load.mix);
    const key = `${load.day} ${mix}`;
    groups.set(key, [...(groups.get(key) ?? []), { ...load, mix }]);
  }
  if (rule.eachHours && [...groups.values()].some(hoursUnknown)) {
    return issue("times-needed", { rule: rule.name });
  }
  return [...groups.values()].map((loads) => {
    const [{ day, mix }] = loads as [Placed];
    const made = loads.reduce((sum, { tests }) => sum + tests, 0);
    const required = requiredTests(loads, rule, system);
    const volume = total(loads, "volume");
    return { day, mix, volume, required, made, missing: Math.max(0, required - made) };
  });
}

function requiredTests(
  loads: readonly Placed[],
  { atLeast, eachVolume, eachArea, eachHours }: TestingRule,
  system: UnitSystem,
): number {
  const periods = eachHours ? Math.max(1, begun(hoursOf(loads), eachHours)) : 1;
  return Math.max(
    atLeast * periods,
    eachVolume ? begun(total(loads, "volume"), eachVolume[system]) : 0,
    eachArea ? begun(total(loads, "area"), eachArea[system]) : 0,
  );
}

function begun(amount: number, each: number): number {
  return Math.ceil(exact(amount / each));
}

function total(loads: readonly Placed[], what: "volume" | "area"): number {
  return exact(loads.reduce((sum, load) => sum + (load[what] ?? 0), 0));
}

/** One load takes less than any period, whenever it was. */
function hoursUnknown(loads: readonly Placed[]): boolean {
  return loads.length > 1 && loads.some(({ minute }) => minute === undefined);
}

/** From the first to the last load. */
function hoursOf(loads: readonly Placed[]): number {
  const minutes = loads.map(({ minute = 0 }) => minute);
  return (Math.max(...minutes) - Math.min(...minutes)) / MINUTES_IN_AN_HOUR;
}
