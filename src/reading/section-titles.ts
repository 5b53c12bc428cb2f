import { isBlank } from "../measure/cell-value";
import { BINDING } from "./guards";
import type { Cells } from "./labelled-value";
import { isLabelText } from "./labels";
import { languagesOf, understand } from "./words-in-header";

/**
 * The title of the section of a form in which a row stands, where it makes another test's of everything
 * below it: "B. Pressure meter". The title of the whole form is none.
 */
export function sectionOf(block: Cells, row: number): string | undefined {
  for (let above = row - 1; above > 0; above--) {
    const filled = block[above]!.filter((cell) => !isBlank(cell));
    const [title] = filled;
    if (filled.length === 0) return undefined;
    if (filled.length === 1 && isLabelText(title)) return isOfAnother(title) ? title : undefined;
  }
  return undefined;
}

function isOfAnother(title: string): boolean {
  const { words } = understand(title, languagesOf([title]));
  return words.some(({ terms }) => terms.length > 0 && terms.every((term) => BINDING.has(term)));
}
