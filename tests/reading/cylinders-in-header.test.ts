import { cylindersInHeader } from "../../src/reading/cylinders-in-header";
import { readHeader } from "../../src/reading/units-in-header";

test.each([
  ["Cyl. A 28 d", "firstCylinder"],
  ["28 d #2 (psi)", "secondCylinder"],
  ["C1 28d", "firstCylinder"],
  ["28 j – cyl. 3", "thirdCylinder"],
  ["Zyl II 28d", "secondCylinder"],
  ["f'c 28d cyl 1", "firstCylinder"],
  ["Nº probetas cil.", "cylinders"],
  ["Cyl. made", "cylinders"],
  ["Nb cyl.", "cylinders"],
  ["Cylinder #", undefined],
  ["7 d cyl. 1", undefined],
  ["28 d", undefined],
  ["28 d mean", undefined],
])("“%s” heads %s", (header, field) => {
  expect(cylindersInHeader(readHeader(header).tokens)[0]).toBe(field);
});
