/** What is mutated together, which tests look at it, and the share of mutants that they must notice. */
export interface MutatedFolder {
  readonly of: readonly string[];
  readonly not?: readonly string[];
  /** The tests of the folder first; what they do not notice is tried with the wider ones, which are slow. */
  readonly tests: readonly string[];
  readonly wider?: readonly string[];
  readonly least: number;
}

export const FOLDERS: Readonly<Record<string, MutatedFolder>> = {
  measure: {
    of: ["measure"],
    tests: ["measure"],
    wider: ["reading", "fieldsheet", "functions"],
    least: 95,
  },
  methods: { of: ["methods"], tests: ["methods"], wider: ["fieldsheet", "functions"], least: 95 },
  acceptance: { of: ["acceptance"], tests: ["acceptance"], wider: ["functions"], least: 95 },
  reading: {
    of: ["reading"],
    not: ["reading/vocabulary"],
    tests: ["reading"],
    wider: ["fieldsheet"],
    least: 95,
  },
  rules: {
    of: ["fieldsheet/rules", "fieldsheet/diagnosis"],
    tests: ["fieldsheet"],
    wider: ["functions"],
    least: 95,
  },
};
