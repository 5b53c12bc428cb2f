import type { Answer } from "./answers";

/** A change of answers since the first version that was meant, and why. */
export interface IntendedChange {
  /** Which answers: "check", "findings", ids of worksheet functions, or "every function". */
  readonly of: readonly string[];
  /** What a sheet or a call contains where its answer may be another; "any" for all. */
  readonly tag: string;
  readonly reason: string;
}

/** Whether a change is about an answer. */
export function isAbout({ of: ofs, tag }: IntendedChange, { of, tags }: Answer): boolean {
  const every = ofs.includes("every function") && of !== "check" && of !== "findings";
  return (every || ofs.includes(of)) && (tag === "any" || tags.has(tag));
}

/** Where answers may differ from those of the first version. */
export const INTENDED_CHANGES: readonly IntendedChange[] = [
  {
    of: ["findings"],
    tag: "share of one",
    reason:
      "A reading that the method refuses is said once; an air content below zero that would follow from it is not said besides.",
  },
  {
    of: ["check", "findings", "every function"],
    tag: "beyond a number",
    reason:
      "A text such as 1e309 is not a number that a cell can hold, so that no result or sentence speaks of Infinity.",
  },
  {
    of: ["CHART.CUSUM", "SPEC.LIMITS"],
    tag: "huge number",
    reason:
      "Sums and differences of numbers beyond 9 million are given as they are, not as Infinity.",
  },
  {
    of: ["STRENGTH.ACCEPT"],
    tag: "several values",
    reason:
      "Units that differ down a column are refused: only the first was looked at, and nothing said so.",
  },
  {
    of: ["check", "findings", "AIR", "READING.FINAL", "READING.NEXT"],
    tag: "off-grid",
    reason:
      "A reading between two graduations is computed as it was written, with a doubt, and no longer refused.",
  },
  {
    of: ["check", "findings"],
    tag: "share of one",
    reason:
      "A reading below 0.1 is refused as a share of one also where it would lie between two graduations.",
  },
  {
    of: ["check", "findings", "AIR"],
    tag: "many cups",
    reason: "Cups that lead to more than 30 % of air are refused.",
  },
  {
    of: ["check", "findings", "every function"],
    tag: "decimal comma",
    reason:
      "A comma that no thousands can follow is a decimal comma: 5,25, while 1,250 may be either.",
  },
  {
    of: ["check", "findings"],
    tag: "void word",
    reason: "A test that the tester calls void, in a remark or in place of a number, is void.",
  },
  {
    of: ["check", "findings"],
    tag: "tick",
    reason:
      "A tick in a column of faults is asked about: it may say that somebody looked and found none.",
  },
  {
    of: ["check", "findings"],
    tag: "word",
    reason: "Small numbers and none are read in words, and a limit that is none says what to type.",
  },
  {
    of: ["check", "findings"],
    tag: "other unit in cell",
    reason: "Cups are read with their word.",
  },
  {
    of: ["check", "findings"],
    tag: "date text",
    reason: "A date as text is read in the order that the other dates of its column show.",
  },
  {
    of: ["check", "findings"],
    tag: "time in figures",
    reason: "A whole number such as 915 in a column of times is 9:15, and 366 is none.",
  },
  {
    of: ["check", "findings"],
    tag: "day number as a limit",
    reason: "A day number in the place of a limit is refused: spreadsheets make one of 5-8.",
  },
  {
    of: ["check", "findings"],
    tag: "huge number",
    reason: "A number beyond the last day that a spreadsheet counts is no date and no time of day.",
  },
  {
    of: ["check", "findings"],
    tag: "column not read",
    reason:
      "A column that holds something and is not read is said; where it may decide a test, the tests that it touches are incomplete.",
  },
  {
    of: ["check", "findings"],
    tag: "column final",
    reason: "Beside a second reading without a first, a plain meter reading is read as the first.",
  },
  {
    of: ["findings"],
    tag: "column start",
    reason:
      "A header such as “Time tested” names the time of the row, not the start of the test after sampling.",
  },
  {
    of: ["check", "findings"],
    tag: "column air",
    reason:
      "A wrong result and its cause are one finding, and a slip that the whole column makes is one of the sheet.",
  },
  {
    of: ["check", "findings"],
    tag: "column bowlVolume",
    reason: "A bowl noted in metric units is held to the 2.0 L of the metric pair.",
  },
  {
    of: ["check", "findings"],
    tag: "column discharged",
    reason: "A time to discharge is held only where somebody has stated one (ASTM C94-21).",
  },
  {
    of: ["check", "findings"],
    tag: "column concreteTemperature",
    reason: "The least temperature of the thickest sections is 40 °F or 4 °C (UFGS 03311).",
  },
  {
    of: ["check", "findings"],
    tag: "column wind",
    reason: "Evaporation in SI units is by Uno's own form, no conversion of the US one.",
  },
  {
    of: ["check", "findings"],
    tag: "column slump",
    reason: "On stiff concrete a volumetric check of the pressure meter may be due, and is a note.",
  },
  ...["column low", "column high", "column target", "limits given"].map((tag) => ({
    of: ["check", "findings"],
    tag,
    reason:
      "On a limit the sentence leads with within, and the check-test rule is named as that of ASTM C94.",
  })),
  {
    of: ["EVAPORATION"],
    tag: "any",
    reason: "Evaporation in SI units is by Uno's own form, no conversion of the US one.",
  },
  {
    of: ["check", "findings"],
    tag: "field twice",
    reason: "Of two columns that could both be a field none is read, instead of the left one.",
  },
  {
    of: ["check", "findings"],
    tag: "column sampledTo",
    reason:
      "A single time of sampling is when it began: the words do not say that the last portion was taken then.",
  },
  {
    of: ["check", "findings"],
    tag: "column start",
    reason: "A time of test is the start of the test only beside a column for the time of the row.",
  },
  {
    of: ["check", "findings"],
    tag: "column gravimetricAir",
    reason:
      "An air content below 0.1 is a share of one, as a cell with a percentage format holds it.",
  },
  ...["column low", "column high", "column target", "column tolerance", "limits given"].map(
    (tag) => ({
      of: ["check", "findings"],
      tag,
      reason:
        "Nothing is within limits of which one cannot be read, and nothing is held to limits that cross.",
    }),
  ),
  {
    of: [
      ...[
        "AIR.PRESSURE",
        "AIR.FULLMIX",
        "AIR.MORTAR",
        "LEVEL.STABLE",
        "SPEC.LIMITS",
        "SPEC.COMPARE",
      ],
      ...[
        "SPEC.MARGIN",
        "SPEC.ACCEPT",
        "SPEC.CHANCE",
        "SPEC.GUARD",
        "AGREEMENT",
        "AGREEMENT.LIMIT",
      ],
      ...["CHART.LIMITS", "CHART.EWMA", "CHART.CUSUM", "CHART.SIGNALS"],
    ],
    tag: "share of one",
    reason:
      "A share of one among percentages, as a cell with a percentage format holds it, is named and not computed with.",
  },
  {
    of: ["LEVEL.STABLE"],
    tag: "many cups",
    reason: "Minutes of half an hour and more are asked about: seconds are often that many.",
  },
  {
    of: ["AIR"],
    tag: "many cups",
    reason: "No air content is reported in steps of more than 1 %.",
  },
  {
    of: ["EVAPORATION"],
    tag: "any",
    reason: "A humidity of 1 is the 100 % of a cell with a percentage format.",
  },
  {
    of: ["STRENGTH.WITHINTEST"],
    tag: "any",
    reason:
      "Strengths of which one is more than twice another are not of one test, and a cell that cannot be read is named with its row.",
  },
  {
    of: ["check", "findings"],
    tag: "any",
    reason:
      "A density is read with its unit, in that of its column; foam is read as a yes or a no; thousands are read where the sheet shows its decimal mark; a total says nothing of what its column holds.",
  },
  {
    of: ["check", "findings"],
    tag: "column aggregateFactor",
    reason:
      "Readings beside an aggregate correction factor, in a sheet without anything of the volumetric test, may be of a pressure meter: that is asked, and the tests are incomplete.",
  },
  {
    of: ["check", "findings"],
    tag: "any",
    reason:
      "A sheet that reports air without readings has incomplete tests, whose air as reported is held against its limits; before it was not looked at.",
  },
  {
    of: ["findings"],
    tag: "any",
    reason:
      "A column that may decide, but holds nothing that could in any test, is noted and no error.",
  },
  {
    of: ["check", "findings"],
    tag: "any",
    reason:
      "Tests that nothing else names are called by the first column that tells them apart; what may be the third reading or tells of a bound is asked about; a bound on the air beside what cannot void is noted.",
  },
  {
    of: ["findings"],
    tag: "any",
    reason:
      "No load is called decided where its test may be void; numbers in words are read as bounds too.",
  },
];
