import type { CellValue } from "../../../src/measure/cell-value";
import { checkAreaInSteps } from "../../../src/pane/state/checked-area";
import { inOneGo } from "../../../src/reading/steps";
import { readSetup } from "../../../src/reading/setup/setup";

const SETUP = readSetup([
  ["Mix", "Low", "High"],
  ["LW-40", 5, 8],
]);

/** The limits of the only test of a sheet, with 4 and 7 typed in the pane. */
function limits(
  more: Readonly<Record<string, CellValue>>,
  typed = { low: "4", high: "7" },
  setup?: typeof SETUP,
) {
  const headers = [
    "Sample",
    "First reading",
    "Final reading",
    "Alcohol (pt)",
    ...Object.keys(more),
  ];
  const values = [headers, ["S-1", 5, 5, 1, ...Object.values(more)]];
  const area = { sheetId: "1", sheetName: "Tests", row: 0, column: 0 };
  const read = {
    area: { ...area, rows: 2, columns: headers.length },
    address: "Tests!A1:Z2",
    values,
  };
  const checked = inOneGo(checkAreaInSteps(read, { ...typed, decimal: ".", setup }));
  const { low, high } = checked.result.results[0]!.limits;
  return [low, high];
}

// What is typed in the pane holds for every sheet of the workbook, so it must not outweigh any of them.
test.each<[what: string, more: Record<string, CellValue>, expected: unknown[]]>([
  ["nothing", {}, [4, 7]],
  ["both limits", { "Low limit": 5, "High limit": 9 }, [5, 9]],
  ["both in one cell", { "Specified air": "6 ± 1.5" }, [4.5, 7.5]],
  ["both in one cell of few words", { Spec: "6 ± 1.5" }, [4.5, 7.5]],
  ["the least only, in one cell", { "Specified air": "min 4.5" }, [4.5, undefined]],
  ["the low limit only", { "Low limit": 5 }, [5, 7]],
  ["the high limit only", { "High limit": 6 }, [4, 6]],
  ["a blank low limit", { "Low limit": null, Mix: "LW-30" }, [undefined, 7]],
])("a sheet that says %s", (_, more, expected) => {
  expect(limits(more)).toEqual(expected);
});

test("a mix of the setup goes before what is typed, also below a blank limit", () => {
  expect(limits({ Mix: "LW-40" }, undefined, SETUP)).toEqual([5, 8]);
  expect(limits({ Mix: "LW-40", "Low limit": null }, undefined, SETUP)).toEqual([5, 8]);
  expect(limits({ Mix: "LW-30" }, undefined, SETUP)).toEqual([4, 7]);
});
