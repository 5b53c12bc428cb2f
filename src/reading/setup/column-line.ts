import { quoted, shownValue } from "../../measure/cell-value";
import { issue, type Issue } from "../../measure/issue";
import { fieldName } from "../fields";
import { GRAMMAR } from "../grammar";
import type { KeptColumn } from "../recognition";
import { readHeader } from "../units-in-header";
import { fieldNamed, isAsFound } from "./field-named";
import type { Line } from "./line";

/**
 * Reads a line of the columns: what stands below a header is taken for a field, in a unit. `undefined` where
 * it is to be taken as it is found.
 */
export function columnLine(
  { cells }: Line<"header" | "taken for" | "unit">,
  line: number,
): KeptColumn | Issue | undefined {
  const header = shownValue(cells.header).trim();
  const takenFor = shownValue(cells["taken for"]).trim();
  const unit = shownValue(cells.unit).trim();
  const quotedHeader = quoted(header);
  if (header === "") return issue("setup-no-header", { line });
  if (takenFor === "") return issue("setup-nothing-taken-for", { line, header: quotedHeader });
  if (isAsFound(takenFor)) return undefined;
  const named = fieldNamed(takenFor);
  if (!named) {
    return issue("setup-field-unknown", { line, header: quotedHeader, field: quoted(takenFor) });
  }
  const { field } = named;
  if (field === "not ours") return { header, field };
  if (unit === "") return { header, ...named };
  const known = readHeader(unit).onlyUnit?.dimension;
  if (!known)
    return issue("setup-unit-unknown", { line, header: quotedHeader, unit: quoted(unit) });
  return GRAMMAR[field].units.includes(known)
    ? { header, field, unit }
    : issue("setup-unit-does-not-fit", { line, unit, field: fieldName(field) });
}
