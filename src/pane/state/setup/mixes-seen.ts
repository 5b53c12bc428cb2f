import { shownValue } from "../../../measure/cell-value";
import { plainly } from "../../../reading/kept-columns";
import type { CheckedArea } from "../checked-area";
import type { MixSeen } from "./mix-edits";

/** The mixes of the checked tests in the order of the sheet. */
export function mixesSeen(checked: CheckedArea | undefined): readonly MixSeen[] {
  const seen = new Map<string, { readonly mix: string; size: string | null | undefined }>();
  if (!checked) return [];
  const { reading } = checked.result;
  for (const { record, values } of reading.records) {
    if (values.mix === undefined) continue;
    const size = shownValue(reading.cell(record, "aggregateSize")).trim() || undefined;
    const name = plainly(values.mix);
    const known = seen.get(name);
    if (!known) seen.set(name, { mix: values.mix.trim(), size });
    else if (known.size === undefined) known.size = size;
    else if (size !== undefined && known.size !== size) known.size = null;
  }
  return [...seen.values()].map(({ mix, size }) => ({ mix, ...(size && { size }) }));
}
