import { readFileSync } from "node:fs";
import { htmlOf } from "./markdown.mjs";

/** Where the sections of docs/install.md that the start page shows begin and end. */
const FIRST = "## Excel on the web";
const AFTER = "## When a cell shows";

/**
 * The ways to put the add-in into Excel as HTML, the same that docs/install.md tells, for the page
 * that makes the manifest.
 *
 * @param {string} file docs/install.md
 */
export function waysToInstall(file) {
  const text = readFileSync(file, "utf8").replaceAll("\r\n", "\n");
  const ways = text.slice(text.indexOf(FIRST), text.indexOf(AFTER));
  return ways
    .split(/^(?=## )/m)
    .map((way) => `<section>${htmlOf(way)}</section>`)
    .join("\n");
}
