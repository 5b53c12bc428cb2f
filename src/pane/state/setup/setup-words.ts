import type { CellValue } from "../../../measure/cell-value";
import { inLine, say } from "../../../messages/pane-catalogue";
import { nameInSetup, type FieldId } from "../../../reading/fields";
import { fieldNamed } from "../../../reading/setup/field-named";
import type { MixHeading } from "../../../reading/setup/mix-headings";
import type { Choice } from "./choices";

/** A heading of the specifications as we write them; those of people alone are written as well. */
export type WrittenMixHeading = MixHeading | "exposure" | "source";

/** How the headings of the columns are written. */
export function columnHeadings() {
  return {
    header: say("setup-heading-header"),
    "taken for": say("setup-heading-taken-for"),
    unit: say("setup-heading-unit"),
  } as const;
}

/** How the headings of the settings are written. */
export function settingHeadings() {
  return { setting: say("setup-heading-setting"), value: say("setup-heading-value") } as const;
}

/** Units of what is measured in the sheet, for the headings of what is specified. */
export interface MeasuredUnits {
  readonly density?: string;
  readonly slump?: string;
  readonly temperature?: string;
}

/** How the headings of the specifications by mix are written, in their order. */
export function mixHeadingsWritten(units: MeasuredUnits): Readonly<Record<string, string>> {
  const inUnit = (heading: string, unit: string | undefined) =>
    unit === undefined ? heading : `${heading} (${unit})`;
  return {
    mix: say("setup-heading-mix"),
    "air target": say("setup-heading-target"),
    "air tolerance": say("setup-heading-tolerance"),
    "air low": say("setup-heading-low"),
    "air high": say("setup-heading-high"),
    aggregate: say("setup-heading-aggregate"),
    aggregateSize: say("setup-heading-aggregate-size"),
    exposure: say("setup-heading-exposure"),
    "density low": inUnit(say("setup-heading-density-low"), units.density),
    "density high": inUnit(say("setup-heading-density-high"), units.density),
    "slump low": inUnit(say("setup-heading-slump-low"), units.slump),
    "slump high": inUnit(say("setup-heading-slump-high"), units.slump),
    "temperature low": inUnit(say("setup-heading-temperature-low"), units.temperature),
    "temperature high": inUnit(say("setup-heading-temperature-high"), units.temperature),
    source: say("setup-heading-source"),
  } satisfies Partial<Record<WrittenMixHeading, string>>;
}

/** The settings that a new sheet offers, with their values. */
export function settingLines(
  scaleEnd: number,
  datesFrom: 1900 | 1904 | undefined,
): readonly CellValue[][] {
  return [
    [say("setup-scale-end"), scaleEnd],
    [say("setup-dates-from"), datesFrom ?? ""],
    [nameOf("deliveryStandard"), ""],
    [nameOf("dischargeLimit"), ""],
    [nameOf("revolutionLimit"), ""],
  ];
}

/** What a choice is called on the sheet. */
export function takenForWords(field: Choice["field"]): string {
  if (field === "not ours") return say("setup-not-ours");
  return field === "as found" ? say("setup-as-found") : nameOf(field);
}

/** Our name for a field, in the language in use where a setup is read by it so. */
function nameOf(field: FieldId): string {
  const name = inLine(`field-${field}`);
  return fieldNamed(name)?.field === field ? name : nameInSetup(field);
}
