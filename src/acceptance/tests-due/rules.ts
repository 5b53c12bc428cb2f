import { quoted } from "../../measure/cell-value";
import { issue, type Issue } from "../../measure/issue";
import type { UnitSystem } from "../../measure/unit-system";

/** How often concrete is tested, of one mix on one day. */
export interface TestingRule {
  readonly name: string;
  /** How people write its name, in small letters. */
  readonly written: RegExp;
  /** Tests on a day however small. */
  readonly atLeast: number;
  /** One test for each such volume, begun ones counted: yd³, m³. */
  readonly eachVolume?: Readonly<Record<UnitSystem, number>>;
  /** One test for each such area of slabs or walls, begun ones counted: ft², m². */
  readonly eachArea?: Readonly<Record<UnitSystem, number>>;
  /** `atLeast` holds for each such period of production, begun ones counted: hours. */
  readonly eachHours?: number;
}

/**
 * Every rule that is held; the first is taken where none is named. That a begun volume, area or
 * period counts as a whole one is our own reading, on the safe side.
 */
export const TESTING_RULES: readonly TestingRule[] = [
  // An article on ACI 318-08: once a day, once for each 150 yd³ (110 to 115 m³) and once for each 5,000 ft²
  // (460 m²) of slabs or walls.
  {
    name: "ACI 318-08",
    written: /\baci\b(?!.*\d)|\b318\b|\b150\b(?! ?(?:m3|m³|m\^3|cu\S* m|metr))/,
    atLeast: 1,
    eachVolume: { us: 150, si: 110 },
    eachArea: { us: 5000, si: 460 },
  },
  // Common practice of project specifications; 75 m³ is our own pair.
  {
    name: "100 yd3",
    written: /\b100\b(?! ?(?:m3|m³|m\^3|cu\S* m|metr))|\b7[56]\b(?! ?(?:y|cu\S* y))/,
    atLeast: 1,
    eachVolume: { us: 100, si: 75 },
  },
  // UFGS 03301A (older text): two air tests of each mix in each 8 hours of production, besides those with
  // specimens.
  {
    name: "UFGS 03301A",
    written: /\bufgs\b|\b0?3301a?\b|\b(?:8|eight) ?h/,
    atLeast: 2,
    eachHours: 8,
  },
];

/** The rule that a text names. Gives the issue `tests-rule-unknown`, which lists them. */
export function testingRuleNamed(text: string): TestingRule | Issue {
  const plain = text.trim().toLowerCase();
  const found = TESTING_RULES.find(({ written }) => written.test(plain));
  if (found) return found;
  const names = TESTING_RULES.map(({ name }) => name).join(", ");
  return issue("tests-rule-unknown", { value: quoted(text), names });
}
