import { limitsInLine } from "../../src/reading/limits-in-a-line";
import { checkTable } from "../../src/fieldsheet/check-table";
import { isIssue } from "../../src/measure/issue";

test.each([
  ["Specified: 5.5 to 8.5 percent", 5.5, 8.5],
  ["Air 5.0 to 8.0 % all loads.   Reported to the quarter.", 5, 8],
  ["Spec 4.5 min, 7.5 max", 4.5, 7.5],
  ["Acceptable: 5 1/2 % through 8 1/2 %", 5.5, 8.5],
  ["Air to be 5.5 % or more and not over 8 %", 5.5, 8],
  ["Required air 6 ± 1.5 %", 4.5, 7.5],
  ["Lunes 15/06/2026 - mezcla P-42 - aire 4 a 7 %", 4, 7],
  ["Aire especificado: 4,5 % mínimo, 7,5 % máximo", 4.5, 7.5],
  ["Exigé au devis : air de 5 % à 8 % ; affaissement 80 ± 30 mm", 5, 8],
  ["Anforderung: Luftgehalt 5,5 bis 8,5 %", 5.5, 8.5],
])("“%s” asks for %s to %s %%", (line, low, high) => {
  expect(limitsInLine(line)).toEqual({ low, high });
});

test.each([
  "Slump 3 to 5 in",
  "Air temperature 50 to 70 F",
  "Air readings 1 to 3 below",
  "Air tests 9 to 12 June",
  "Air test, lift 2 to 4",
  "Specified slump 3 to 5 in",
  "Class A: 4.5 to 7.5 %",
  "Spec: air 5 to 8 %; spec: air 4 to 7 %",
  "Required air 8 to 5 %",
])("“%s” asks for no air", (line) => {
  expect(limitsInLine(line)).toBeUndefined();
});

test("limits in the header of the reported air hold for every test, and that is said", () => {
  const headers = ["Load", "1st", "2nd", "Alcohol (pt)", "Air, 4.5-7.5 %"];
  const rows = [
    ["L-1", 5.5, 5.5, 2, 5.5],
    ["L-2", 8, 8, 2, 8],
  ];
  const checked = checkTable({ headers, rows });
  if (isIssue(checked)) throw new Error(checked.id);
  expect(checked.results.map(({ specification }) => specification)).toEqual(["within", "above"]);
  expect(checked.findings.map(({ rule }) => rule)).toContain("said-once");
});
