import { inLine, say } from "../../messages/pane-catalogue";
import type { FieldId } from "../../reading/fields";
import { AGGREGATE_FIELDS } from "../../reading/fields/aggregate";
import { AIR_LIMIT_FIELDS } from "../../reading/fields/air-limits";
import { AIR_TEST_FIELDS } from "../../reading/fields/air-test";
import { DELIVERY_AND_SPECIMEN_FIELDS } from "../../reading/fields/delivery-and-specimens";
import { DENSITY_FIELDS } from "../../reading/fields/density";
import { IDENTITY_FIELDS } from "../../reading/fields/identity";
import { PROCEDURE_FIELDS } from "../../reading/fields/procedure";
import { SAMPLING_FIELDS } from "../../reading/fields/sampling";
import { SLUMP_AND_WEATHER_FIELDS } from "../../reading/fields/slump-and-weather";
import { GRAMMAR } from "../../reading/grammar";
import type { Dimension } from "../../reading/unit-spellings";
import { element } from "../kit/element";
import type { ColumnLine } from "../state/setup/column-lines";
import type { Choice } from "../state/setup/choices";

const GROUPS = [
  ["pane-fields-air-test", AIR_TEST_FIELDS],
  ["pane-fields-identity", IDENTITY_FIELDS],
  ["pane-fields-limits", AIR_LIMIT_FIELDS],
  ["pane-fields-procedure", PROCEDURE_FIELDS],
  ["pane-fields-sampling", SAMPLING_FIELDS],
  ["pane-fields-delivery", DELIVERY_AND_SPECIMEN_FIELDS],
  ["pane-fields-aggregate", AGGREGATE_FIELDS],
  ["pane-fields-density", DENSITY_FIELDS],
  ["pane-fields-slump", SLUMP_AND_WEATHER_FIELDS],
] as const;

/** Units that a column can be given, as the readers of cells know them. */
const UNITS: Readonly<Partial<Record<Dimension, readonly string[]>>> = {
  liquid: ["oz", "pt", "mL", "L"],
  length: ["in", "mm", "cm"],
  temperature: ["°F", "°C"],
  density: ["lb/ft³", "kg/m³"],
  duration: ["min", "s"],
  bulk: ["ft³", "L"],
  stress: ["psi", "MPa"],
  speed: ["mph", "km/h"],
};

/** A choice of what a column is taken for. Its many fields are put in when somebody turns to it. */
export function fieldChoice(line: ColumnLine, choose: (choice: Choice) => void): HTMLElement {
  const { name, taken, kept } = line;
  const select = element("select", {
    "aria-label": say("pane-take-column", { header: line.header }),
    disabled: name === undefined,
  });
  const now = kept?.field ?? "as found";
  select.append(option("as found", asFoundLabel(line)));
  if (kept) select.append(option(kept.field, fieldLabel(kept.field)));
  select.value = now;
  const fill = () => {
    if (select.querySelector("optgroup")) return;
    const likely =
      taken.state === "asked" ? taken.candidates : taken.state === "unknown" ? taken.mayBe : [];
    select.replaceChildren(
      option("as found", asFoundLabel(line)),
      option("not ours", say("pane-not-ours")),
      ...(likely.length > 0 ? [group(say("pane-fields-likely"), likely)] : []),
      ...GROUPS.map(([id, fields]) => group(say(id), Object.keys(fields) as FieldId[])),
    );
    select.value = now;
  };
  for (const turnsToIt of ["pointerdown", "focus", "keydown"])
    select.addEventListener(turnsToIt, fill);
  select.addEventListener("change", () =>
    choose({ header: name!, field: select.value as Choice["field"] }),
  );
  return select;
}

/** A choice of the unit, for a column that has one; `undefined` for another. */
export function unitChoice(
  { header, name, taken }: ColumnLine,
  choose: (choice: Choice) => void,
): HTMLElement | undefined {
  if (taken.state !== "read" || name === undefined) return undefined;
  const units = GRAMMAR[taken.field].units.flatMap((dimension) => UNITS[dimension] ?? []);
  if (units.length === 0) return undefined;
  const select = element("select", { "aria-label": say("pane-unit-of-column", { header }) });
  const now = taken.unit ?? "";
  const others = units.includes(now) || now === "" ? [] : [now];
  select.append(
    option("", say("pane-unit-as-written")),
    ...[...others, ...units].map((unit) => option(unit, unit)),
  );
  select.value = now;
  select.addEventListener("change", () =>
    choose({
      header: name,
      field: taken.field,
      ...(select.value !== "" && { unit: select.value }),
    }),
  );
  return select;
}

function option(value: string, label: string): HTMLElement {
  return element("option", { value }, label);
}

function group(label: string, fields: readonly FieldId[]): HTMLElement {
  return element(
    "optgroup",
    { label },
    ...fields.map((field) => option(field, inLine(`field-${field}`))),
  );
}

function fieldLabel(field: FieldId | "not ours"): string {
  return field === "not ours" ? say("pane-not-ours") : inLine(`field-${field}`);
}

/** What the column is taken for where nothing is said of it; not known while something is. */
function asFoundLabel({ taken, kept }: ColumnLine): string {
  if (kept) return say("pane-as-found");
  if (taken.state === "read") return inLine(`field-${taken.field}`);
  return say(`pane-column-${taken.state === "not ours" ? "not-ours" : taken.state}`);
}
