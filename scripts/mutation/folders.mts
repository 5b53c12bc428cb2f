/** What is mutated together, which tests look at it, and the share of mutants that they must notice. */
export interface MutatedFolder {
  readonly of: readonly string[];
  readonly not?: readonly string[];
  readonly tests: readonly string[];
  readonly least: number;
}

export const FOLDERS: Readonly<Record<string, MutatedFolder>> = {
  measure: { of: ["measure"], tests: ["measure", "methods", "functions"], least: 95 },
  methods: { of: ["methods"], tests: ["methods", "functions"], least: 95 },
  acceptance: { of: ["acceptance"], tests: ["acceptance", "functions"], least: 95 },
  reading: {
    of: ["reading"],
    not: ["reading/vocabulary"],
    tests: ["reading", "fieldsheet"],
    least: 95,
  },
  rules: {
    of: ["fieldsheet/rules", "fieldsheet/diagnosis"],
    tests: ["fieldsheet", "functions"],
    least: 95,
  },
};
