import { isIssue } from "../../src/measure/issue";
import { densityFromCell } from "../../src/reading/density-in-unit";
import { foamFromCell } from "../../src/reading/foam-from-cell";
import type { CellValue } from "../../src/measure/cell-value";

// Common practice: more than two divisions of foam make the test void; a form asks for it in one word.
test.each<[header: string, cell: CellValue, reads: object | string]>([
  ["Foam > 2 div?", "Y", { value: 2, than: "more" }],
  ["Foam > 2 div?", "N", { value: 2, than: "less" }],
  ["Excessive foam", true, { value: 2, than: "more" }],
  ["Espuma excesiva", "no", { value: 2, than: "less" }],
  ["Trop de mousse", "oui", { value: 2, than: "more" }],
  ["Schaum über 2 Teilstriche", "nein", { value: 2, than: "less" }],
  ["Bubbles on top?", "no", { value: 0 }],
  ["Bubbles on top?", "none", { value: 0 }],
  ["Bubbles on top?", "Yes", "bound-leaves-open"],
  ["Bubbles on top?", "x", "tick-is-unclear"],
  ["Foam", "a lot", "not-a-number"],
  ["Foam", 1.5, { value: 1.5 }],
  ["Foam", ">1", "bound-leaves-open"],
])("foam: %s, %j", (header, cell, reads) => {
  const read = foamFromCell(cell, { header }, ".");
  if (isIssue(read)) expect(read.id).toBe(reads);
  else expect(read).toEqual(reads);
});

test.each<[CellValue, object]>([
  ["yes", { value: 2, than: "less" }],
  ["ok", { value: 2, than: "less" }],
  ["no", { value: 2, than: "more" }],
])("foam that is in order: %j", (cell, reads) => {
  expect(foamFromCell(cell, { header: "Foam OK?", opposite: true }, ".")).toEqual(reads);
});

// 1 lb/ft³ is 16.01846 kg/m³ (NIST SP 811).
test.each<[cell: CellValue, header: string | undefined, reads: number | string]>([
  ["1840 kg/m3", "pcf", 114.87],
  ["1840 kg/m³", undefined, 1840],
  ["1840 kg/m3", "kg/m³", 1840],
  ["115 pcf", "kg/m3", 1842.12],
  ["115 lb/ft³", undefined, 115],
  ["118 kg/m3", "pcf", "two-ways"],
  ["3180 lb/yd3", "pcf", "not-a-number"],
  ["about 115 pcf", "pcf", "not-a-number"],
  [115.5, "pcf", 115.5],
])("density: %j below %s", (cell, header, reads) => {
  const read = densityFromCell(cell, header, ".");
  expect(isIssue(read) ? read.id : read).toBe(reads);
});
