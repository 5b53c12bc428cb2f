import type { TestResult } from "../../fieldsheet/test-result";
import { writtenDay } from "../../measure/spreadsheet-day";
import { writtenTime } from "../../measure/time-of-day";
import { isBlank, quoted } from "../../measure/cell-value";
import { say } from "../../messages/pane-catalogue";
import type { FieldId } from "../../reading/fields";
import { badgeWord } from "../kit/badge";
import { typedText } from "../kit/shown-number";
import { placeOf, type CheckedArea } from "../state/checked-area";
import { limitsShown } from "./heading-of-sheet";

/** A column of the table of tests. */
export interface ReportColumn {
  readonly label: string;
  /** What stands in it for a test; "" for nothing. */
  readonly cell: (test: TestResult) => string | number;
  /** Whether it holds words, which need more room than numbers. */
  readonly words?: true;
  /** Whether its numbers are air contents, which are shown with two decimals. */
  readonly percent?: true;
}

/** Fields of which one value for all tests is told at the head of the report and needs no column. */
type AtTheHead = "date" | "mix";

/**
 * The columns of the table of tests: those in which any of the tests has something. A value is shown as
 * it stands in the sheet, with the unit of its header in the label.
 */
export function reportColumns(checked: CheckedArea, tests: readonly TestResult[]): ReportColumn[] {
  const { result, decimal } = checked;
  const written = (field: FieldId) => (test: TestResult) => writtenCell(checked, test, field);
  const label = (id: ReportLabel, field?: FieldId) => {
    const unit = field && result.columns[field]?.unit;
    return unit ? say("report-label-unit", { label: say(id), unit: shownUnit(unit) }) : say(id);
  };
  const day = ({ values }: TestResult) =>
    values.date === undefined ? "" : writtenDay(values.date);
  const time = ({ values }: TestResult) => {
    const minute = values.time ?? values.start ?? values.sampledFrom;
    return minute === undefined ? "" : writtenTime(minute);
  };
  const mix = (test: TestResult) => test.values.mix ?? written("mix")(test);
  const alcohol = (test: TestResult) => {
    const amount = test.values.alcohol;
    return amount
      ? `${typedText(amount.amount, decimal)} ${amount.unit}`
      : writtenCell(checked, test, "alcohol");
  };
  const columns: (ReportColumn & { readonly head?: AtTheHead })[] = [
    { label: label("report-row"), cell: (test) => rowOf(checked, test) },
    { label: label("report-sample"), cell: ({ sample }) => sample, words: true },
    { label: label("report-date"), cell: day, head: "date" },
    { label: label("report-time"), cell: time },
    { label: label("report-mix"), cell: mix, words: true, head: "mix" },
    { label: label("report-first"), cell: written("first") },
    { label: label("report-second"), cell: written("second") },
    { label: label("report-third"), cell: written("third") },
    {
      label: label("report-final"),
      cell: ({ finalReading }) => finalReading ?? "",
      percent: true,
    },
    { label: label("report-alcohol"), cell: alcohol },
    { label: label("report-cups"), cell: written("cups") },
    { label: label("report-air-reported"), cell: written("air") },
    { label: label("report-air"), cell: ({ air }) => air ?? "", percent: true },
    {
      label: label("report-limits-head"),
      cell: ({ limits }) => limitsShown(limits, decimal),
    },
    { label: label("report-result"), cell: resultOf, words: true },
    { label: label("report-density", "density"), cell: written("density") },
    {
      label: label("report-temperature", "concreteTemperature"),
      cell: written("concreteTemperature"),
    },
    { label: label("report-slump", "slump"), cell: written("slump") },
  ];
  return columns.filter(({ cell, head }) => {
    const values = tests.map(cell);
    if (head && tests.length > 1 && new Set(values).size === 1) return false;
    return values.some((value) => value !== "");
  });
}

type ReportLabel =
  | "report-row"
  | "report-sample"
  | "report-date"
  | "report-time"
  | "report-mix"
  | "report-first"
  | "report-second"
  | "report-third"
  | "report-final"
  | "report-alcohol"
  | "report-cups"
  | "report-air-reported"
  | "report-air"
  | "report-limits-head"
  | "report-result"
  | "report-density"
  | "report-temperature"
  | "report-slump";

/** Degrees are written with their sign. */
function shownUnit(unit: string): string {
  return /^[cf]$/i.test(unit) ? `°${unit.toUpperCase()}` : unit;
}

/** The verdict of a valid test against the specification; else that it is void or incomplete. */
function resultOf({ state, specification }: TestResult): string {
  if (state === "") return "";
  if (state !== "valid") return badgeWord(state);
  return specification ? say(`report-valid-${specification}`) : badgeWord("valid");
}

function rowOf(checked: CheckedArea, { record }: TestResult): number {
  return placeOf(checked, { record, field: null }).row + 1;
}

function writtenCell(
  checked: CheckedArea,
  { record }: TestResult,
  field: FieldId,
): string | number {
  const { reading } = checked.result;
  const value = reading.has(field) ? reading.cell(record, field) : null;
  if (isBlank(value)) return "";
  return typeof value === "number" ? value : quoted(value);
}
