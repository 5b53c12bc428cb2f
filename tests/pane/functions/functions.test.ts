import { findFunctions } from "../../../src/pane/functions/find-functions";
import { functionHelpFrom } from "../../../src/pane/functions/function-help";
import { formulaOf, shownFormula } from "../../../src/pane/functions/shown-formula";

const DECLARED = {
  functions: [
    {
      name: "AIR",
      description: "Air content, %, of a volumetric test.",
      parameters: [
        { name: "reading", description: "Final meter reading, %." },
        { name: "cups", description: "Calibrated cups.", optional: true },
      ],
    },
    { name: "DENSITY", description: "Density of fresh concrete.", parameters: [] },
    { name: "AIR.EXPECTED", description: "Air from the density.", parameters: [] },
    { name: "BATCH.YIELD", description: "Volume of a batch.", parameters: [] },
  ],
};
const EXAMPLES = {
  AIR: ["6.25", "1"],
  DENSITY: [],
  "AIR.EXPECTED": [],
  "BATCH.YIELD": ["{1.5,2}"],
};
const functions = functionHelpFrom(DECLARED, EXAMPLES);

test.each<[typed: string, found: string[]]>([
  ["", ["AIR", "DENSITY", "AIR.EXPECTED", "BATCH.YIELD"]],
  ["air", ["AIR", "AIR.EXPECTED"]],
  ["=FRESH.AIR.E", ["AIR.EXPECTED"]],
  ["fresh.density", ["DENSITY"]],
  // Words of the trade that no help has: unit weight is an older name of density.
  ["unit weight", ["DENSITY"]],
  ["peso unitario", ["DENSITY"]],
  ["rendimiento", ["BATCH.YIELD"]],
  ["Calibrated", ["AIR"]],
  ["reading final", ["AIR"]],
  ["  Medidór ", ["AIR", "AIR.EXPECTED"]],
  ["slump", []],
  ["(", ["AIR", "DENSITY", "AIR.EXPECTED", "BATCH.YIELD"]],
])("%j finds %j", (typed, found) => {
  expect(findFunctions(functions, typed).map(({ name }) => name)).toEqual(found);
});

test("an example is shown as it is typed where the comma is the decimal mark, and inserted in English", () => {
  const [air, , , batch] = functions;
  expect(shownFormula(air!, ".")).toBe("=FRESH.AIR(6.25, 1)");
  expect(shownFormula(air!, ",")).toBe("=FRESH.AIR(6,25; 1)");
  expect(formulaOf(air!)).toBe("=FRESH.AIR(6.25,1)");
  expect(formulaOf(batch!)).toBe("=FRESH.BATCH.YIELD({1.5,2})");
});

test.each<[what: string, declared: unknown, examples: unknown]>([
  ["nothing", undefined, undefined],
  ["another file", { functions: "none" }, {}],
  ["a function without an example", DECLARED, {}],
])("%s gives no help", (_, declared, examples) => {
  expect(functionHelpFrom(declared, examples)).toEqual([]);
});
