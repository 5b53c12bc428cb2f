import type { FieldId } from "../../../reading/fields";
import { keptFor, plainly } from "../../../reading/kept-columns";
import type { SheetColumn } from "../../../reading/recognition";
import { readSetup, type Setup } from "../../../reading/setup/setup";

/** What the user has said of a column or label, and is not kept in the workbook yet. */
export interface Choice {
  /** The header by which it is known again. */
  readonly header: string;
  /** "as found" where whatever was kept holds no more. */
  readonly field: FieldId | "not ours" | "as found";
  readonly unit?: string;
}

/** Choices by their header, letters large or small and spaces aside. */
export type Choices = ReadonlyMap<string, Choice>;

/** The choices with one more, or another one of the same column. */
export function withChoice(choices: Choices, choice: Choice): Choices {
  return new Map([...choices, [plainly(choice.header), choice]]);
}

const NO_SETUP = readSetup([]);

/** The setup as it would be once the choices are kept. */
export function withChoices(kept: Setup | undefined, choices: Choices): Setup {
  const base = kept ?? NO_SETUP;
  if (choices.size === 0) return base;
  const chosen = [...choices.values()].flatMap(({ header, field, unit }) =>
    field === "as found" ? [] : [{ header, field, ...(unit !== undefined && { unit }) }],
  );
  const others = base.columns.filter(({ header }) => !choices.has(plainly(header)));
  return { ...base, columns: [...chosen, ...others] };
}

/**
 * For each column the header by which a setting names it: that of the setting which holds for it by now,
 * else its own header, else that with the titles above; `undefined` where none of them is its alone.
 */
export function settingNames(
  columns: readonly SheetColumn[],
  setup: Setup,
): readonly (string | undefined)[] {
  const now = keptFor(columns, setup.columns);
  return columns.map(({ headers }, index) => {
    const held = now[index];
    if (held) return held.header;
    const own = [...headers].reverse().find((text) => text.trim() !== "");
    return [own, headers.join(" ")].find((header) => {
      if (header === undefined || header.trim() === "") return false;
      const named = keptFor(columns, [{ header, field: "not ours" }]);
      return named[index] !== undefined;
    });
  });
}
