import {
  breakingChanges,
  declaredFunctions,
  type RecordedFunction,
} from "../../scripts/functions-record";
import recorded from "./functions-record.json";

describe("the declared functions", () => {
  test("break no workbook that uses a recorded one", async () => {
    expect(breakingChanges(recorded, await declaredFunctions())).toEqual([]);
  });

  test("are all recorded; after an addition run: npm run record-functions", async () => {
    expect(await declaredFunctions()).toEqual(recorded);
  });
});

describe("a change that breaks workbooks is told from one that adds", () => {
  const air: RecordedFunction = {
    id: "AIR",
    name: "AIR",
    result: "any[][]",
    parameters: ["reading: any[][]", "cups?: any[][]"],
  };

  test.each<[string, RecordedFunction[], number]>([
    ["nothing", [air], 0],
    ["a function is added", [air, { ...air, id: "FOAM", name: "FOAM" }], 0],
    [
      "an optional argument is added at the end",
      [{ ...air, parameters: [...air.parameters, "step?: any[][]"] }],
      0,
    ],
    ["the function is gone", [], 1],
    ["its id changes", [{ ...air, id: "AIR.CONTENT" }], 1],
    ["its name changes", [{ ...air, name: "AIR.CONTENT" }], 1],
    ["its result changes", [{ ...air, result: "number" }], 1],
    ["arguments change places", [{ ...air, parameters: [...air.parameters].reverse() }], 2],
    ["an argument is gone", [{ ...air, parameters: ["reading: any[][]"] }], 1],
    [
      "an argument comes in between",
      [{ ...air, parameters: ["reading: any[][]", "unit?: any[][]", "cups?: any[][]"] }],
      1,
    ],
    [
      "an optional argument must be given now",
      [{ ...air, parameters: ["reading: any[][]", "cups: any[][]"] }],
      1,
    ],
    [
      "a new argument must be given",
      [{ ...air, parameters: [...air.parameters, "step: any[][]"] }],
      1,
    ],
    ["a type changes", [{ ...air, parameters: ["reading: number", "cups?: any[][]"] }], 1],
  ])("%s", (_change, declared, breaks) => {
    expect(breakingChanges([air], declared)).toHaveLength(breaks);
  });
});
