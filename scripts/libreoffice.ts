import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

const USUAL_PLACES = [
  "/Applications/LibreOffice.app/Contents/MacOS/soffice",
  "C:\\Program Files\\LibreOffice\\program\\soffice.exe",
];

/** Without this LibreOffice trusts the results that stand in the file, except those of arrays. */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** The program of an installed LibreOffice; nothing where there is none. */
export function libreOffice(): string | undefined {
  const onPath = (process.env.PATH ?? "")
    .split(delimiter)
    .flatMap((folder) => [join(folder, "soffice"), join(folder, "soffice.exe")]);
  return [...onPath, ...USUAL_PLACES].find((place) => existsSync(place));
}

/**
 * Opens a workbook in LibreOffice and saves it again as .xlsx.
 *
 * @param program What `libreOffice` found.
 * @param file The workbook.
 * @param folder An empty folder to work in.
 * @param calculates Whether every formula is calculated anew on opening.
 * @returns The workbook as LibreOffice saved it.
 */
export function savedByLibreOffice(
  program: string,
  file: string,
  folder: string,
  calculates: boolean,
): Buffer {
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  if (calculates)
    writeFileSync(join(profile, "user", "registrymodifications.xcu"), ALWAYS_RECALCULATE);
  const out = join(folder, "saved");
  execFileSync(
    program,
    [
      `-env:UserInstallation=${pathToFileURL(profile).href}`,
      ...["--headless", "--convert-to", "xlsx", "--outdir", out, file],
    ],
    { stdio: "ignore" },
  );
  return readFileSync(join(out, basename(file)));
}
