/** Our functions in a file: no dots in names there, and a prefix for functions of an add-in. */
const OURS = /_xldudf_(FRESH_[A-Z0-9_]+)/g;
/** Prefixes that mark functions younger than the file format. */
const YOUNGER = /_xl(?:fn|ws|pm)\./g;

/** The formula of a cell as people write it, from how a file stores it. */
export function writtenFormula(stored: string): string {
  const written = stored
    .replace(OURS, (_, name: string) => name.replaceAll("_", "."))
    .replace(YOUNGER, "");
  return written.startsWith("=") ? written : `=${written}`;
}
