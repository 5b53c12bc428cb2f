/*
 * Excels before August 2024 hand over a blank cell to a custom function as 0; the maker calls it a bug
 * that is mended, and no requirement set says so (office-js issues 1951, 4702, 5262; the last report is of
 * January 2025). CustomFunctionsRuntime 1.5 came in April 2025, after all of them: an Excel that has it is
 * taken to hand over blanks as blanks. Of any other it is known once it was seen.
 */

/** How blank cells come to functions in the Excel at hand. */
export type HowBlanksCome = "blank" | "zero" | "unknown";

/** Where what was seen is kept, for the version of Excel that it was seen in. */
const KEY = "fresh-blank-cells";

/** How blank cells come here: as was seen in this very version, else as its requirement sets tell. */
export function howBlanksCome(): HowBlanksCome {
  const [version, seen] = read()?.split(" ") ?? [];
  if (version === versionOfExcel() && (seen === "blank" || seen === "zero")) return seen;
  const { requirements } = contextOfOffice();
  return requirements?.isSetSupported("CustomFunctionsRuntime", "1.5") ? "blank" : "unknown";
}

/** Keeps what was seen, for this version of Excel on this machine. */
export function keepHowBlanksCome(seen: "blank" | "zero"): void {
  const version = versionOfExcel();
  if (version === undefined) return;
  try {
    localStorage.setItem(KEY, `${version} ${seen}`);
  } catch {
    // Kept nowhere, it is seen again next time.
  }
}

function read(): string | undefined {
  try {
    return localStorage.getItem(KEY) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Such as "PC/16.0.17928.20114"; `undefined` as long as Excel has not told. */
function versionOfExcel(): string | undefined {
  const { diagnostics } = contextOfOffice();
  return diagnostics && `${diagnostics.platform}/${diagnostics.version}`.replace(/\s/g, "");
}

/** Empty until Office is ready, and where the functions are run without it. */
function contextOfOffice(): Partial<Office.Context> {
  return (typeof Office === "undefined" ? undefined : Office.context) ?? {};
}
