import { biasOf, type Bias, type TestBy } from "../acceptance/bias/bias";
import { cellValueFrom, isBlank } from "../measure/cell-value";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { shareAmongPercents } from "../measure/percent-as-share";
import { textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import { setting, type Argument } from "./runner/argument";
import { orThrow } from "./runner/cell-error";
import { CellTable } from "./runner/cell-table";
import { columnsTogether, type Place } from "./runner/columns-together";
import { single } from "./runner/setting";

const HEADER = ["who", "tests", "difference", "standard error", "t", "p"];

const splitSamples: Argument<boolean | undefined> = setting({
  name: "paired",
  optional: true,
  setting: true,
  read: yesOrNoFromCell,
});

/**
 * Compares each technician, meter or plant with the others on the same mixes: tests, mean difference, standard error, Student's t and the chance p of so large a difference where there is none. Of twenty names, one is below 0.05 by chance.
 * @customfunction BIAS BIAS
 * @param air Air contents in % (or other results), one column.
 * @param who Who or what made each, over the same rows.
 * @param [mix] Mix of each; all are one mix where it is left out. With paired tests the sample that was split.
 * @param [paired] TRUE for split samples: the differences within each sample count (paired t test). Else Welch's t test within the mixes.
 * @returns A header row and a line for each name: who, tests, difference, standard error, t, p; blank where there are too few tests.
 * @example =FRESH.BIAS({6;6.5;7;5;5.5;6}, {"A";"A";"A";"B";"B";"B"}) gives "who", "tests", "difference", "standard error", "t", "p"; "A", 3, 1, 0.408, 2.449, 0.0705; "B", 3, -1, 0.408, -2.449, 0.0705 [both variances 0.25; √(0.25/3 + 0.25/3) = 0.408; p for 4 degrees of freedom from a reference library]
 * @example =FRESH.BIAS({6.25;6;5.5;5;7.25;6.5}, {"A";"B";"A";"B";"A";"B"}, {"S1";"S1";"S2";"S2";"S3";"S3"}, TRUE) gives "who", "tests", "difference", "standard error", "t", "p"; "A", 3, 0.5, 0.1443, 3.4641, 0.0742; "B", 3, -0.5, 0.1443, -3.4641, 0.0742 [differences 0.25, 0.5, 0.75; deviation 0.25 / √3; p for 2 degrees of freedom from a reference library]
 */
export function bias(air: any[][], who: any[][], mix?: any[][], paired?: any[][]): any[][] {
  const places = orThrow(columnsTogether({ air, who, mix }));
  const split = orThrow(single(splitSamples).read(new CellTable(paired)));
  const byMix = split || (mix ?? []).flat().some((cell) => !isBlank(cellValueFrom(cell)));
  const tests = places.flatMap((place) => orThrow(testAt(place, byMix)) ?? []);
  orThrow(at("air", shareAmongPercents(...tests.map(({ value }) => value))));
  return [HEADER, ...orThrow(biasOf(tests, split)).map(lineOf)];
}

/** The test of a place; none where the result or the name is blank. */
function testAt(
  { cells: [air, who, mix], where }: Place,
  byMix: boolean,
): TestBy | undefined | Issue {
  if (isBlank(air) || isBlank(who)) return undefined;
  const value = at(where(0), numberFromCell(air!));
  if (isIssue(value)) return value;
  const name = at(where(1), textFromCell(who!));
  if (isIssue(name)) return name;
  const of = at(where(2), textFromCell(mix ?? null));
  if (isIssue(of)) return of;
  if (of === undefined && byMix) return at(where(2), issue("mix-of-test-missing"));
  return { value: value!, who: name!, mix: of ?? "" };
}

function lineOf({ who, tests, difference, standardError, t, p }: Bias): (string | number)[] {
  return [who, tests, difference ?? "", standardError ?? "", t ?? "", p ?? ""];
}
