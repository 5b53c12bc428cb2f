import type { Words } from "../sentence";

/** What is said of who tests higher or lower than the others. */
export const paneBiasMessages = {
  "bias-heading": "Who differs",
  "bias-by": "Compared by the column",
  "bias-none":
    "No column of the checked table names who or what made the tests, such as a technician, a meter or a plant, each more than once.",
  "bias-nobody":
    "Nobody is to be compared: no two of them have valid tests of the same mix, or only one has any.",
  "bias-hint":
    "Each one’s difference from the others on the same mixes, valid tests only, with its standard error either way.",
  "bias-axis": "Difference from the others, % air",
  "bias-read-off": "Differences in the chart, with the arrow keys",
  "bias-read-off-hint": "Point at a difference, or move along with the arrow keys.",
  "bias-line": ({
    who,
    difference,
    error,
    tests,
  }: Words<"who" | "difference" | "error" | "tests">) =>
    `${who}: ${difference} %, standard error ${error} %, tests: ${tests}.`,
  "bias-line-alone": ({ who, difference, tests }: Words<"who" | "difference" | "tests">) =>
    `${who}: ${difference} %, tests: ${tests}. Too few to say how well that is known.`,
  "bias-not-compared": ({ who }: Words<"who">) =>
    `${who}: nobody else tested the same mix, so there is nothing to compare with.`,
  "bias-told": ({ chance }: Words<"chance">) =>
    `Where nobody differs, so much comes about by chance in ${chance} of cases: look into it.`,
  "bias-not-told": ({ chance, needed }: Words<"chance" | "needed">) =>
    `Where nobody differs, so much comes about by chance in ${chance} of cases. To tell such a difference, ${needed} tests of each on the same mixes would be needed.`,
  "bias-not-told-ever": ({ chance }: Words<"chance">) =>
    `Where nobody differs, so much comes about by chance in ${chance} of cases.`,
  "bias-basis":
    "Welch’s t test within the mixes. A difference is told from chance below 5 %; what is needed is reckoned so that it would be noticed four times in five (normal approximation, Guenther 1981). Of twenty who do not differ, one is below 5 % all the same.",
  "bias-table": "Numbers of the picture",
  "bias-table-who": "Who",
  "bias-table-tests": "Tests",
  "bias-table-difference": "Difference ± standard error, %",
  "bias-table-chance": "By chance",
  "bias-table-needed": "Needed each",
  "bias-cut": ({ shown, all }: Words<"shown" | "all">) =>
    `The picture shows the first ${shown} of ${all}; the table has them all.`,
} as const;
