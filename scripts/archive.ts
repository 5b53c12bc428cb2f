import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { zipSync } from "fflate";

/**
 * A folder as a zip archive that depends on nothing but its files and the time: sorted, with one time
 * for all, packed by a library that gives the same bytes on every machine.
 *
 * @param time Written into every entry, as it is in UTC; the format knows no time zone.
 */
export function archiveOf(folder: string, time: Date): Uint8Array {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.replaceAll("\\", "/"))
    .sort();
  const entries = names.map((name) => [name, new Uint8Array(readFileSync(join(folder, name)))]);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: asLocal(time) });
}

/** The library writes local time; a day is enough, and noon exists in every time zone. */
function asLocal(time: Date): Date {
  return new Date(time.getUTCFullYear(), time.getUTCMonth(), time.getUTCDate(), 12);
}
