import type { Random } from "../simulation/random";

/** As much text as a cell can hold, of kinds that patterns may trip over. */
const LONG = ["1", " ", "1 ", ",", "((", "-1", "½", "😀", "\n", "a."].map((part) =>
  part.repeat(Math.floor(32_767 / part.length)),
);

/** Whatever a host may hand over for a cell, and what none should. */
const HOSTILE: readonly unknown[] = [
  ...[null, undefined, "", " ", "-", "n/a", true, false],
  ...[0, -0, 1, -1, 0.1 + 0.2, 1e-9, 1e9, 1e15, 1e300, -1e300, 5e-324, 46_182, 2_958_466],
  ...[NaN, Infinity, -Infinity, Number.MAX_VALUE],
  ...["0", "-0", "1,5", "1.250,5", "1e309", "-1e309", "1e-400", "5.25 %", "1/0", "5 1/4", "⅜"],
  ...["48 oz", "1e309 oz", "-0 L", "12 furlongs", "<b>6</b>", "=1+1", "😀", "\u0000", "NaN"],
  ...["2026-05-31", "99999-99-99", "0000-00-00", "5/6/2026", "25:61", "void", "#N/A", "#DIV/0!"],
  { code: "#N/A" },
  { error: "#REF!" },
  { type: "Error", basicValue: "#BUSY!" },
  { type: "FormattedNumber", basicValue: 6, numberFormat: "0.00" },
  { type: "Entity", text: "a load", basicValue: "S-1" },
  { type: "Entity", text: "a load" },
  {},
];

/** A cell that nobody means to give. */
export function hostileCell(random: Random): unknown {
  return random.chance(0.01) ? random.one(LONG) : random.one(HOSTILE);
}
