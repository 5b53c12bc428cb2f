import { readFileSync } from "node:fs";
import { sampleFiles } from "../../scripts/samples/sample-files";
import { WEEK_HEADERS, WEEK_ROWS, WEEK_SETUP } from "../../scripts/samples/week-of-mixes";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { readSetup } from "../../src/reading/setup/setup";
import { weekOfMixesSheets } from "../../scripts/samples/week-of-mixes-sheets";
import { checkAreaInSteps } from "../../src/pane/state/checked-area";
import { reviewOf } from "../../src/pane/state/review/review-of";
import { NO_REVIEW } from "../../src/pane/state/review/review-on-sheet";
import { inOneGo } from "../../src/reading/steps";
import { readReview, type Review } from "../../src/review/read-review";
import { checkedTable } from "../fieldsheet/checked";

const setup = readSetup(WEEK_SETUP);
const checked = checkedTable({ headers: WEEK_HEADERS, rows: WEEK_ROWS }, { setup });

// By hand: air = final reading − correction, to the nearest 0.25. Corrections of 48 and 64 oz are 0.30 and
// 0.60, and none up to 32 oz (ASTM C173 Table 1 as reproduced in a meter maker's manual, 2019). Limits are
// those of the setup: wall 4.5 to 7.5, topping 5 to 8, pier 3.5 to 6.5.
test.each<
  [sample: string, state: string, air: number | "", against: string, rule: string, why: string]
>([
  ["W-01", "valid", 6, "within", "", "6.00"],
  ["W-02", "valid", 5, "within", "", "5.00"],
  ["W-03", "valid", 7.75, "above", "outside-specification", "the wall takes 7.5 at most"],
  ["W-04", "valid", 7.75, "within", "", "the topping takes 8"],
  ["W-05", "valid", 6.25, "within", "", "6.50 − 0.30 = 6.20; the mix in other letters"],
  ["W-06", "valid", 3.25, "below", "outside-specification", "the pier takes 3.5 at least"],
  ["W-07", "valid", 6, "within", "density-outside-specification", "119 lb/ft³, 118 allowed"],
  ["W-08", "valid", 6.5, "within", "slump-outside-tolerance", "6 in, 5 allowed"],
  ["W-09", "valid", 6, "within", "concrete-temperature", "93 °F, 90 allowed"],
  ["W-10", "valid", 5.5, "within", "", "5.50"],
  ["W-11", "incomplete", "", "", "third-reading-missing", "5.00 and 5.75 need a third"],
  ["W-12", "valid", 6, "within", "", "6.50 − 0.60 = 5.90"],
  ["W-13", "valid", 8, "", "", "a mix of which the setup says nothing"],
  ["W-14", "valid", 6.5, "within", "", "on the limit of the pier"],
])("%s: %s %s %s %s (%s)", (sample, state, air, against, rule) => {
  const result = checked.results.find((each) => each.sample === sample)!;
  expect([result.state, result.air ?? "", result.specification ?? ""]).toEqual([
    state,
    air,
    against,
  ]);
  const rules = result.findings.map((finding) => finding.rule);
  const ofLimits = rules.filter((each) =>
    /specification$|tolerance$|temperature$|missing$/.test(each),
  );
  expect(ofLimits).toEqual(rule === "" ? [] : [rule]);
});

test("of the sheet as a whole only the mix without a line is said", () => {
  expect(setup.issues).toEqual([]);
  const said = checked.findings.filter(({ record }) => record === null);
  expect(said.map(({ say, values }) => [say, values.mixes])).toEqual([
    ["setup-mixes-missing", "“LW-30 trial”"],
  ]);
});

test("the committed file is that which the script makes now; after a change run: npm run samples", async () => {
  const made = (await sampleFiles())["week-of-mixes.xlsx"] as Uint8Array;
  const committed = await readWorkbook(readFileSync("samples/week-of-mixes.xlsx"));
  expect(committed).toEqual(await readWorkbook(made));
  expect(committed.sheets.map(({ name }) => name)).toEqual([
    "Tests",
    "Fresh setup",
    "Fresh review",
    "Read me",
  ]);
});

test("the decisions of the sample's review hold for its findings, as the pane reads them", () => {
  const sheets = weekOfMixesSheets();
  const valuesIn = (name: string) => {
    const { rows } = sheets.find((sheet) => sheet.name === name)!;
    const width = Math.max(...rows.map((row) => row.length));
    return rows.map((row) => Array.from({ length: width }, (_, at) => row[at]?.v ?? null));
  };
  const read = {
    area: { sheetId: "1", sheetName: "Tests", row: 0, column: 0, rows: 15, columns: 16 },
    address: "Tests!A1:P15",
    values: valuesIn("Tests"),
  };
  const options = { low: "", high: "", decimal: ".", setup } as const;
  const area = inOneGo(checkAreaInSteps(read, options));
  const review = readReview(valuesIn("Fresh review")) as Review;
  expect(review.notTaken).toEqual([]);
  const of = reviewOf(area, { ...NO_REVIEW, entries: review.entries });
  expect(of.counts).toMatchObject({ accepted: 2, corrected: 1 });
  expect(of.gone).toEqual([]);
});
