import { shownValue } from "../../measure/cell-value";
import { isIssue, issue, issuePhrase, type Issue } from "../../measure/issue";
import type { DecimalMark } from "../../measure/number-from-cell";
import { FIELD_READERS } from "../field-readers";
import { FIELDS } from "../fields";
import type { AirLimits } from "../limits-in";
import type { FieldValues } from "../record";
import type { Line } from "./line";
import { GIVEN_FIELDS, QUANTITIES, type MixHeading } from "./mix-headings";
import { quantityLimits } from "./quantity-limits";

/** What is specified for a mix. */
export interface MixSpecification {
  readonly mix: string;
  readonly air: AirLimits;
  /** By field, what holds for a test that says nothing of it itself. */
  readonly values: FieldValues;
  /** As written with a limit of the density, which is a plain number in a test. */
  readonly densityUnit?: string;
}

/** Reads a line of the specifications by mix. Nothing of it is used unless all of it can be. */
export function mixLine(
  line: Line<MixHeading>,
  at: number,
  decimal: DecimalMark,
): MixSpecification | Issue {
  const mix = shownValue(line.cells.mix).trim();
  if (mix === "") return issue("setup-no-mix", { line: at });
  let air: AirLimits = {};
  const values: Record<string, unknown> = {};
  let densityUnit: string | undefined;
  for (const quantity of QUANTITIES) {
    const limits = quantityLimits(quantity, line, at, decimal);
    if (isIssue(limits)) return limits;
    const { low, high, target, unit } = limits;
    if (quantity === "air")
      air = { ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
    else if (quantity === "density") {
      densityUnit = unit;
      Object.assign(values, given({ densityLow: low, densityHigh: high, densityTarget: target }));
    } else {
      const [lowest, highest] =
        quantity === "slump" ? ["slumpLow", "slumpHigh"] : ["temperatureLow", "temperatureHigh"];
      const measured = (value: number | undefined) =>
        value === undefined ? undefined : { value, ...(unit !== undefined && { unit }) };
      const fields = { [lowest!]: measured(low), [highest!]: measured(high) };
      Object.assign(values, given({ ...fields, nominalSlump: measured(target) }));
    }
  }
  for (const field of GIVEN_FIELDS) {
    const cell = line.cells[field];
    if (cell === undefined) continue;
    const value = FIELD_READERS[FIELDS[field].kind](cell, { unit: line.units[field], decimal });
    if (isIssue(value)) {
      const why = issuePhrase(value);
      return issue("setup-value-unreadable", { line: at, heading: line.heading(field), why });
    }
    Object.assign(values, given({ [field]: value }));
  }
  return { mix, air, values, ...(densityUnit !== undefined && { densityUnit }) };
}

function given(values: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
}
