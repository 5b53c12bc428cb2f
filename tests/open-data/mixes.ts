import { readFileSync } from "node:fs";
import { join } from "node:path";

/** One concrete of concrete-mixes.csv. */
export interface Mix {
  /** Mass of everything in a cubic metre, kg. */
  readonly mass: number;
  readonly water: number;
  readonly cementitious: number;
  readonly slag: number;
  readonly age: number;
  /** MPa. */
  readonly strength: number;
}

const lines = readFileSync(join(__dirname, "concrete-mixes.csv"), "utf8").trim().split(/\r?\n/);

/** All mixes in the order of the file. */
export const MIXES: readonly Mix[] = lines.slice(1).map((line) => {
  const [cement, slag, flyAsh, water, plasticizer, coarse, fine, age, strength] = line
    .split(",")
    .map(Number) as [number, number, number, number, number, number, number, number, number];
  return {
    mass: cement + slag + flyAsh + water + plasticizer + coarse + fine,
    water,
    cementitious: cement + slag + flyAsh,
    slag,
    age,
    strength,
  };
});

/** Those tested at 28 days. */
export const AT_28_DAYS = MIXES.filter(({ age }) => age === 28);
