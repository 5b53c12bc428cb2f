import { readFileSync } from "node:fs";

/** The heading in docs/install.md for each kind of machine; on others Excel runs in the browser. */
const HEADINGS: Readonly<Record<string, string>> = {
  win32: "Excel on Windows, from a shared folder",
  darwin: "Excel on a Mac, from a folder",
};
const ELSEWHERE = "Excel on the web";

/** Where Excel on a Mac looks for manifests, in the home folder. */
export const MAC_FOLDER = "Library/Containers/com.microsoft.Excel/Data/Documents/wef";

/** The part of docs/install.md for a kind of machine, as `process.platform` names it. */
export function installSteps(platform: string): string {
  const heading = HEADINGS[platform] ?? ELSEWHERE;
  const page = readFileSync("docs/install.md", "utf8").replaceAll("\r\n", "\n");
  const section = page.split(/^## /m).find((part) => part.startsWith(`${heading}\n`));
  if (!section) throw new Error(`docs/install.md has no section "${heading}".`);
  return section.replace(/\*\*|`/g, "").trim();
}
