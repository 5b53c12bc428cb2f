import { recogniseColumns } from "../../src/reading/columns";
import type { FieldId } from "../../src/reading/fields";
import { ENGLISH } from "../../src/reading/vocabulary/english";

/** Field and unit that one header is recognised as, with nothing beside it. */
function recognised(header: string): [field: string | undefined, unit: string | undefined] {
  const [[field, place] = []] = Object.entries(recogniseColumns([header]));
  return [field, place?.unit];
}

describe("every heading of a field is that field alone", () => {
  test.each(
    Object.entries(ENGLISH.headings).flatMap(([field, headings]) =>
      headings.split(",").map((heading) => [heading.trim(), field] as const),
    ),
  )("%s: %s", (heading, field) => {
    expect(recognised(heading)[0]).toBe(field);
    expect(recognised(heading.toUpperCase())[0]).toBe(field);
  });
});

describe("headers as people write them (common practice)", () => {
  const rows: [header: string, field: FieldId, unit?: string][] = [
    ["First reading (%)", "first", "%"],
    ["  1st Reading ", "first"],
    ["Initial Meter Reading, %", "first", "%"],
    ["Meter reading no. 1", "first"],
    ["Rdg 1", "first"],
    ["1st Rdg.", "first"],
    ["Reading, first", "first"],
    ["Reading, second", "second"],
    ["Meter reading (1st)", "first", "1st"],
    ["Readings (2nd) [%]", "second", "%"],
    ["R1", "first"],
    ["2nd RDG (%)", "second", "%"],
    ["Reading #2", "second"],
    ["Confirming reading", "second"],
    ["Third reading [%]", "third", "%"],
    ["Final meter reading %", "final", "%"],
    ["Reading", "final"],
    ["Cups added (1 % each)", "cups", "%"],
    ["No. of cups", "cups"],
    ["Number of calibrated cups", "cups"],
    ["Alcohol (oz)", "alcohol", "oz"],
    ["Alcohol, pints", "alcohol", "pints"],
    ["Alcohol (IPA, fl. oz.)", "alcohol", "oz"],
    ["Alcohol (IPA) oz", "alcohol", "oz"],
    ["Isopropyl alcohol, 70 % (mL)", "alcohol", "ml"],
    ["IPA added [L]", "alcohol", "l"],
    ["Amount of alcohol (gal)", "alcohol", "gal"],
    ["ALC. (OZ.)", "alcohol", "oz"],
    ["Pints of alcohol", "alcohol", "pints"],
    ["Alcohol added after zeroing the meter (oz)", "lateAlcohol", "oz"],
    ["Alcohol strength (%)", "alcoholStrength", "%"],
    ["Foam (full divisions)", "foam", "divisions"],
    ["Foam on the neck", "foam"],
    ["Time to settle, min", "settle", "min"],
    ["Settling time (s)", "settle", "s"],
    ["Min. to settle", "settle", "min"],
    ["Undisturbed concrete?", "packed"],
    ["Packed concrete left (y/n)", "packed", "y/n"],
    ["Air", "air"],
    ["Air content of the concrete (%)", "air", "%"],
    ["Air, final", "air"],
    ["% air", "air", "%"],
    ["Reported air %", "air", "%"],
    ["Low", "low"],
    ["Air min", "low"],
    ["Spec. min", "low"],
    ["Lower limit (%)", "low", "%"],
    ["Air spec max.", "high"],
    ["Target air (%)", "target", "%"],
    ["± (%)", "tolerance", "%"],
    ["+/- (%)", "tolerance", "%"],
    ["Tolerance", "tolerance"],
    ["Test #", "sample"],
    ["Sample ID", "sample"],
    ["Truck No.", "load"],
    ["Ticket #", "load"],
    ["Date tested", "date"],
    ["Time of sampling", "sampledFrom"],
    ["Test started", "start"],
    ["Time of test", "time"],
    ["Meter No.", "meter"],
    ["Date of meter check", "meterCheck"],
    ["Inversion time, s", "inversion", "s"],
    ["Agg. size (in.)", "aggregateSize", "in"],
    ["Nominal max. size (mm)", "aggregateSize", "mm"],
    ["Unit weight (lb/ft³)", "density", "lb/ft³"],
    ["Air, gravimetric (%)", "gravimetricAir", "%"],
  ];
  test.each(rows.map(([header, field, unit]) => ({ header, field, unit })))(
    "$header: $field $unit",
    ({ header, field, unit }) => {
      expect(recognised(header)).toEqual([field, unit]);
    },
  );
});

describe("headers that mean something else are left alone", () => {
  test.each([
    "Remarks",
    "Tested by",
    "No.",
    "Number",
    "Initial set",
    "Alcohol supplier",
    "Alcohol correction",
    "Water (lb/yd³)",
    "First name",
    "Air entrainer (oz/cwt)",
    "Test age",
    "",
  ])("%s", (header) => {
    expect(recogniseColumns([header])).toEqual({});
  });
});

describe("readings without a number of their own", () => {
  test.each([
    ["all headed alike", ["Reading", "Reading", "Reading"], {}],
    // Excel's tables tell equal headers apart in this way (known widely).
    ["numbered by a table", ["Reading", "Reading2"], { first: 0, second: 1 }],
    ["with units", ["Meter rdg (%)", "Meter rdg (%)2"], { first: 0, second: 1 }],
    [
      "one after two with numbers",
      ["Rdg 1", "Rdg 2", "Reading"],
      { first: 0, second: 1, final: 2 },
    ],
    ["one alone", ["Sample", "Reading"], { sample: 0, final: 1 }],
  ])("%s", (_, headers, places) => {
    const found = Object.entries(recogniseColumns(headers));
    expect(Object.fromEntries(found.map(([field, { index }]) => [field, index]))).toEqual(places);
  });
});

describe("between columns", () => {
  test("the plain heading wins over one that contains it, wherever it stands", () => {
    const columns = recogniseColumns(["Air content by the lab", "Air"]);
    expect(columns.air).toEqual({ index: 1, header: "Air", unit: undefined });
  });

  test("of two equals none is read", () => {
    expect(recogniseColumns(["Air", "Air"])).toEqual({});
  });

  test("a column has one field", () => {
    const columns = recogniseColumns(["First reading", "Second reading", "Reading"]);
    expect(Object.values(columns).map(({ index }) => index)).toEqual([0, 1, 2]);
    const late = recogniseColumns(["Alcohol added after zeroing"]);
    expect(Object.keys(late)).toEqual(["lateAlcohol"]);
  });

  test("numbers, blanks and errors as headers are no hindrance", () => {
    const columns = recogniseColumns([null, 7, true, { error: "#N/A" }, "Air"]);
    expect(Object.keys(columns)).toEqual(["air"]);
  });
});
