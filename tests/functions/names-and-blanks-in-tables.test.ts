import { shown } from "./custom-functions-runtime";
import { bias } from "../../src/functions/bias";
import { testsDueFor } from "../../src/functions/tests-due";

const column = (cells: readonly unknown[]) => cells.map((cell) => [cell]);
const D = 46_000;

/** What follows the header row, or the sentence. */
const below = (run: () => unknown[][]) => {
  const cells = shown(run);
  return Array.isArray(cells) ? cells.slice(1) : cells;
};

describe("FRESH.BIAS", () => {
  const of = (...given: (readonly unknown[] | undefined)[]) =>
    below(() =>
      bias(...(given.map((cells) => cells && column(cells)) as Parameters<typeof bias>)),
    ) as unknown[][];

  // Names are one, however they are spaced or their letters are written: one person, one mix ("common practice").
  test.each([
    [["A", "a", "B", " b "], undefined],
    [
      ["A", "A", "B", "B"],
      ["LW4", "lw4", "LW4 ", "lw4"],
    ],
  ])("names %j and mixes %j are two of one mix: 6.25 − 5.25 = 1", (who, mix) => {
    const lines = of([6, 6.5, 5, 5.5], who, mix);
    expect(lines.map(([name, tests, difference]) => [name, tests, difference])).toEqual([
      ["A", 2, 1],
      ["B", 2, -1],
    ]);
  });

  // A pair is of one sample by definition; without its sample, or its mix, nothing says what a test is compared with.
  test.each([
    [["S1", "S1", null, null], [true]],
    [undefined, [true]],
    [["M1", "M1", null, "M1"], undefined],
  ])("within %j, paired %j, a test without its mix is named", (mix, paired) => {
    const who = ["A", "B", "A", "B"];
    expect(of([6.25, 6, 5.5, 5], who, mix, paired)).toMatch(/^#VALUE! Mix, cell [13]: the cell is/);
  });
});

describe("FRESH.TESTS.DUE", () => {
  const of = (...given: (readonly unknown[] | undefined)[]) =>
    below(() =>
      testsDueFor(
        ...(given.map((cells) => cells && column(cells)) as Parameters<typeof testsDueFor>),
      ),
    );
  const ACI = ["ACI 318-08"];
  const UFGS = ["UFGS 03301A"];
  const mixes = ["LW4", "LW4"];

  // 90 + 70 yd³ begin a second 150 (an article on ACI 318-08): 2 are required; what was made is counted by hand.
  test.each<[mixes: unknown[], tested: unknown[], mix: string, made: number]>([
    [["LW4", "lw4 "], [6, 5.5], "LW4", 2],
    [mixes, [6, "void"], "LW4", 1],
    [mixes, [6, "VOID - leak"], "LW4", 1],
    [mixes, [6, false], "LW4", 1],
    [mixes, [6, "no"], "LW4", 1],
    [mixes, [6, "none"], "LW4", 1],
    [mixes, [6, "not tested"], "LW4", 1],
    [mixes, [6, "sin ensayo"], "LW4", 1],
    [mixes, [true, "yes"], "LW4", 2],
  ])("mixes %j tested %j: of %s %d", (of2, tested, mix, made) => {
    expect(of([D, D], of2, [90, 70], ACI, tested)).toEqual([[D, mix, 160, 2, made, 2 - made]]);
  });

  // Two of each mix in 8 hours, begun ones counted (UFGS 03301A, older text): 9 hours begin a second 8.
  test.each<[dates: unknown[], day: number, required: number]>([
    [[D + 6 / 24, D + 15 / 24], D, 4],
    [[D, D + 9 / 24], D, 4],
    [["2026-03-02 06:00", "2026-03-02 15:00"], 46_083, 4],
    [["3/22/2026 6:00 AM", "3/22/2026 3:00 PM"], 46_103, 4],
    [["2026-03-02 06:00", "2026-03-02 14:00"], 46_083, 2],
  ])("loads at %j are of one day, %d, with %d tests required", (dates, day, required) => {
    expect(of(dates, mixes, [9, 9], UFGS)).toEqual([
      [day, "LW4", 18, required, 2, Math.max(0, required - 2)],
    ]);
  });

  test.each<[what: string, given: (readonly unknown[] | undefined)[], sentence: RegExp]>([
    ["a day that stands once for several rows", [[D, null], mixes, [90, 70]], /Dates, cell 2: no/],
    ["a volume below 0", [[D, D], mixes, [90, -70]], /Volumes, cell 2: -70 cannot be/],
    ["a 0 for what was found", [[D, D], mixes, [90, 70], ACI, [0, 6]], /Tested, cell 1: 0 can be/],
    ["hours without times", [[D, D], mixes, [9, 9], UFGS], /counts by hours, and the time of day/],
    ["a rule in m³ that is none", [[D], ["LW4"], [9], ["100 m3"]], /“100 m3” is not a rule/],
    ["another in m³", [[D], ["LW4"], [9], ["each 150 m³"]], /“each 150 m³” is not a rule/],
  ])("%s is said", (_, given, sentence) => {
    expect(of(...given)).toMatch(sentence);
  });

  test("a row that is blank but for its mix is no load", () => {
    expect(of([D, null], mixes, [90, null])).toEqual([[D, "LW4", 90, 1, 1, 0]]);
  });
});
