import { formCase, type FormCase, type FormCell } from "../form-case";

/** A form of the blind corpus: it is kept apart. */
export function blindForm(
  name: string,
  sheets: Readonly<Record<string, readonly (readonly FormCell[])[]>>,
): FormCase {
  return formCase(name, sheets, true);
}
