import { M3_PER_FT3 } from "./conversion";
import type { Measured } from "./measured";

/** Units in which the volume of a vessel is noted. */
export type VolumeUnit = "ft3" | "in3" | "L" | "mL" | "m3";

const LITRES: Readonly<Record<VolumeUnit, number>> = {
  ft3: M3_PER_FT3 * 1000,
  in3: (M3_PER_FT3 * 1000) / 1728,
  L: 1,
  mL: 0.001,
  m3: 1000,
};

const SPELLINGS: readonly (readonly [VolumeUnit, RegExp])[] = [
  ["ft3", /^(?:ft3|cuft|cf|cubicf(?:oo|ee)t)$/],
  ["in3", /^(?:in3|cuin|cubicinch(?:es)?)$/],
  ["L", /^(?:l|lit(?:er|re)s?)$/],
  ["mL", /^(?:ml|cc|cm3|millilit(?:er|re)s?)$/],
  ["m3", /^(?:m3|cum|cubicmet(?:er|re)s?)$/],
];

/** Between which numbers a volume without a unit can only be in one: what the vessels of a kind hold. */
export type UsualVolumes = Readonly<
  Partial<Record<VolumeUnit, readonly [low: number, high: number]>>
>;

/**
 * A volume in litres.
 *
 * @param measured The number with its unit, if one was written.
 * @param usual For a number without one, in which units it can be.
 * @returns `undefined` where the unit is not one of volume, or it cannot be told.
 */
export function litres(volume: Measured, usual: UsualVolumes): number | undefined {
  const named = volumeUnitOf(volume, usual);
  return named && volume.value * LITRES[named];
}

/** The unit that a volume is in; `undefined` as for `litres`. */
export function volumeUnitOf(
  { value, unit }: Measured,
  usual: UsualVolumes,
): VolumeUnit | undefined {
  return unit === undefined ? unitByRange(value, usual) : unitNamed(unit);
}

function unitNamed(written: string): VolumeUnit | undefined {
  const letters = written
    .toLowerCase()
    .replace(/³/g, "3")
    .replace(/[.^\s]/g, "");
  return SPELLINGS.find(([, spelling]) => spelling.test(letters))?.[0];
}

function unitByRange(value: number, usual: UsualVolumes): VolumeUnit | undefined {
  const possible = Object.entries(usual).filter(([, [low, high]]) => value >= low && value <= high);
  return possible.length === 1 ? (possible[0]![0] as VolumeUnit) : undefined;
}
