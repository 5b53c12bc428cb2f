import { readFileSync } from "node:fs";
import { htmlOf } from "./markdown.mjs";

/** Where the sections that the start page shows begin and end. */
const FIRST = /^## Excel (?:on the web|en la web)$/m;
const AFTER = /^## (?:When a cell shows|Cuando una celda muestra)/m;

/**
 * The ways to put the add-in into Excel as HTML, the same that docs/install.md tells, or docs/instalar.md in
 * Spanish, for the page that makes the manifest.
 *
 * @param {string} file docs/install.md or docs/instalar.md
 */
export function waysToInstall(file) {
  const text = readFileSync(file, "utf8").replaceAll("\r\n", "\n");
  const ways = text.slice(text.search(FIRST), text.search(AFTER));
  return ways
    .split(/^(?=## )/m)
    .map((way) => `<section>${htmlOf(way)}</section>`)
    .join("\n");
}
