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
  ["Slump 3-5 in, air 5-8 %", 5, 8],
  ["Spec: slump 3 to 5 in, air 5 to 8 %", 5, 8],
  ["Especificado: revenimiento 8 a 12 cm, aire 5 a 8 %", 5, 8],
  ["Spec: slump 4 ± 1 in, air 6.5 ± 1.5 %, w/c 0.45", 5, 8],
  ["Spec: air 5 min, 8 max, slump 3 min, 5 max", 5, 8],
  ["Spec section 3 to 5, air 5 to 8 %", 5, 8],
  ["Limits 4.5-7.5", 4.5, 7.5],
  ["Air in concrete 5 to 8 %", 5, 8],
  ["Spec: air between 5 and 8 %", 5, 8],
  ["Air 6.5 ± 1.5 %, that is 5 to 8 %", 5, 8],
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
  "Spec air 6.5 %, w/c 0.45, slump 4 ± 1 in",
  "Air 5-8 % for mix A, 4-7 % for mix B",
  "Slump 3 to 5 in and air 5 to 8 %",
  "Spec 5-8-26",
  "Limits as of 5-12-2026",
  "Specification sections 3 to 5",
  "Spec rev 3-12",
  "Tolerance 5-7 loads",
  "Limites 5 a 7 cm",
  "Target air temp 10 - 15",
  "Air meter no. 2-4, 5 % cal check",
  "Aggregate correction factor air 0.2 to 0.4 %",
  "Air loss by pump 1 to 1.5 %",
  "Accepted tolerance on repeat readings: 0.25 to 0.5 %",
  "Air content, readings 1 and 2 in %",
  "Air content test by ASTM C173, 5 to 8 % alcohol",
  "Air %, after 2 to 4 min",
  "Spec: roll 5 min, 8 max",
  "Spec slump 4 in, air 3 to 5 in",
  "Air tests 4 - 7 per day, spec",
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
