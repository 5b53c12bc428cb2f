import { testingRuleNamed, TESTING_RULES } from "../acceptance/tests-due/rules";
import { testsDue, type Placed } from "../acceptance/tests-due/tests-due";
import { cellErrorIssue } from "../measure/cell-error-issue";
import { isBlank, isCellError, shownValue, type CellValue } from "../measure/cell-value";
import { dateFromCell } from "../measure/date";
import { minuteOfDayFromCell } from "../measure/time-of-day";
import { folded } from "../measure/folded";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { textFromCell, yesOrNoFromCell } from "../measure/words-from-cell";
import { saidOfTest } from "../reading/testers-word";
import { setting, text } from "./runner/argument";
import { orThrow } from "./runner/cell-error";
import { CellTable } from "./runner/cell-table";
import { columnsTogether, type Place } from "./runner/columns-together";
import { single } from "./runner/setting";
import { units as unitsArgument } from "./runner/units-argument";

const HEADER = ["day", "mix", "volume", "required", "made", "missing"];

/**
 * Tests required, made and missing, a line for each day and mix, by the rule that the specification names: "ACI 318-08" (daily, each 150 yd³, each 5,000 ft²), "100 yd3" or "UFGS 03301A" (two of each mix in 8 hours). What has begun counts as whole.
 * @customfunction TESTS.DUE TESTS.DUE
 * @param dates Day of each load, one column; with its time of day where the rule counts hours.
 * @param mixes Mix of each load, over the same rows.
 * @param volumes Volume of each load in yd³, or m³ in SI.
 * @param [rule] "ACI 318-08" unless given; "100 yd3"; "UFGS 03301A".
 * @param [tested] What shows that a load was tested, such as its air content: a blank, no or void is no test. Left out: each row is a test.
 * @param [areas] Area of slabs or walls that each load filled, in ft², or m² in SI.
 * @param [units] "us" or "si"; "us" unless given.
 * @returns A header row and lines: day (as a date number), mix, volume, required, made, missing.
 * @example =FRESH.TESTS.DUE({46000;46000}, "LW4", {90;70}, "ACI 318-08", {6;""}) gives "day", "mix", "volume", "required", "made", "missing"; 46000, "LW4", 160, 2, 1, 1 [160 yd³ begin a second 150; one of the two loads was tested]
 * @example =FRESH.TESTS.DUE({46000;46000}, {"NW5";"NW5"}, {20;25}, "ACI 318-08", {6;5.5}, {400;600}, "si") gives "day", "mix", "volume", "required", "made", "missing"; 46000, "NW5", 45, 3, 2, 1 [1,000 m² begin a third 460]
 */
export function testsDueFor(
  dates: any[][],
  mixes: any[][],
  volumes: any[][],
  rule?: any[][],
  tested?: any[][],
  areas?: any[][],
  units?: any[][],
): any[][] {
  const places = orThrow(columnsTogether({ dates, mixes, volumes, tested, areas }));
  const named = orThrow(single(setting(text("rule"))).read(new CellTable(rule)));
  const held =
    named === undefined ? TESTING_RULES[0]! : orThrow(at("rule", testingRuleNamed(named)));
  const system = orThrow(single(unitsArgument).read(new CellTable(units)));
  const eachIsATest = tested === undefined || tested === null;
  // A day without a fraction is midnight where others have their time, else a day without its time.
  const midnight = places.some(({ cells: [date] }) => typeof date === "number" && date % 1 > 0);
  const given = { eachIsATest, wholeDay: midnight ? 0 : undefined };
  const placed = places.flatMap((place) => orThrow(placedAt(place, given)) ?? []);
  const due = orThrow(testsDue(placed, held, system));
  return [
    HEADER,
    ...due.map(({ day, mix, volume, required, made, missing }) => [
      day,
      mix,
      volume,
      required,
      made,
      missing,
    ]),
  ];
}

interface Given {
  readonly eachIsATest: boolean;
  /** The time of a day that has no fraction; absent where it is not known. */
  readonly wholeDay: number | undefined;
}

/** The load of a place; none where all its cells are blank. */
function placedAt(
  { cells, where }: Place,
  { eachIsATest, wholeDay }: Given,
): Placed | undefined | Issue {
  const [date, mix, volume, tested, area] = cells as [
    CellValue,
    CellValue,
    CellValue,
    CellValue,
    CellValue,
  ];
  const day = at(where(0), dateFromCell(date));
  if (isIssue(day)) return day;
  if (day === undefined) {
    // A mix alone may be one value for all rows.
    const blank = [volume, tested, area].every(isBlank);
    return blank ? undefined : at(where(0), issue("argument-missing"));
  }
  const named = at(where(1), textFromCell(mix));
  if (isIssue(named)) return named;
  const placed = at(where(2), amount(volume));
  if (isIssue(placed)) return placed;
  const filled = at(where(4), amount(area));
  if (isIssue(filled)) return filled;
  const tests = eachIsATest ? 1 : at(where(3), testsToldBy(tested));
  if (isIssue(tests)) return tests;
  const wholeNumber = typeof date === "number" && Number.isInteger(date);
  const minute = wholeNumber ? wholeDay : minuteOfDayFromCell(date);
  return {
    day,
    minute: isIssue(minute) ? undefined : minute,
    mix: named ?? "",
    volume: placed,
    area: filled,
    tests,
  };
}

/** A volume or an area. */
function amount(cell: CellValue): number | undefined | Issue {
  const read = numberFromCell(cell);
  return typeof read === "number" && read < 0 ? issue("below-zero", { value: read }) : read;
}

/** How people say that a load was not tested, besides a blank, "no" and "none"; folded. */
const NOT_TESTED =
  /\bnot (?:yet )?tested\b|\buntested\b|\bno tests?\b|\bsin (?:prueba|ensayo)|\bno (?:se )?(?:probad|ensayad|probo|ensayo)/;

/** One test, or none where the cell is blank, denies it or says that it was void. */
function testsToldBy(cell: CellValue): 0 | 1 | Issue {
  if (isCellError(cell)) return cellErrorIssue(cell);
  if (isBlank(cell)) return 0;
  if (numberFromCell(cell) === 0) return issue("tested-or-zero");
  const text = shownValue(cell);
  const denied = yesOrNoFromCell(cell) === false || NOT_TESTED.test(folded(text));
  return denied || saidOfTest(text) === "void" ? 0 : 1;
}
