import { isBlank, quoted, type CellValue } from "../../measure/cell-value";
import { issue, type Issue } from "../../measure/issue";
import type { DecimalMark } from "../../measure/number-from-cell";
import type { FieldId } from "../fields";
import { plainly } from "../kept-columns";
import type { KeptColumn } from "../recognition";
import type { FieldValues } from "../record";
import { AgreedLines } from "./agreed-lines";
import { columnLine } from "./column-line";
import { lineBelow } from "./line";
import { mixLine, type MixSpecification } from "./mix-line";
import { setupLines } from "./setup-lines";
import { settingLine, type SheetSetting } from "./setting-line";

/** What people have written down of their sheets, once for all of them. */
export interface Setup {
  readonly columns: readonly KeptColumn[];
  /** What is specified for a mix; `undefined` where the setup does not name it. */
  readonly specificationFor: (mix: string) => MixSpecification | undefined;
  /** Whether it gives air limits for some mix. */
  readonly limitsAir: boolean;
  /** The fields that it gives for some mix. */
  readonly fields: ReadonlySet<FieldId>;
  /** Where the scale of the meter ends, %. */
  readonly scaleEnd?: number;
  /** From which year the workbook counts its days. */
  readonly datesFrom?: 1900 | 1904;
  /** By field, what holds for every test of which neither the sheet nor its mix says anything. */
  readonly everywhere: FieldValues;
  /** Why lines, or all of it, cannot be used. None of them is applied. */
  readonly issues: readonly Issue[];
}

/**
 * Reads a setup from plain cells: a table of columns (header, taken for, unit), one of specifications by
 * mix and one of settings (setting, value), below or beside each other, with titles or blank lines between
 * them, headed in English, Spanish, French or German. Any may be absent. Nothing of a line is used unless
 * all of it can be.
 *
 * @param firstLine How the first line is counted in what is said of it.
 */
export function readSetup(
  cells: readonly (readonly CellValue[])[],
  decimal: DecimalMark = ".",
  firstLine = 1,
): Setup {
  const issues: Issue[] = [];
  const columns = new AgreedLines<KeptColumn>(
    ({ header }) => header,
    (line, { header }, before) =>
      issue("setup-header-twice", { line, header: quoted(header), before }),
  );
  const mixes = new AgreedLines<MixSpecification>(
    ({ mix }) => mix,
    (line, { mix }, before) => issue("setup-mix-twice", { line, mix: quoted(mix), before }),
  );
  const settings = new AgreedLines<SheetSetting>(
    ({ is }) => is,
    (line, _, before) => issue("setup-setting-twice", { line, before }),
  );
  let headless = !cells.every((row) => row.every(isBlank));
  for (const { at, row, parts, headed } of setupLines(cells)) {
    const line = firstLine + at;
    if (headed) {
      headless = false;
      for (const column of headed.notUsed)
        issues.push(issue("setup-column-not-used", { line, heading: quoted(row[column]) }));
      continue;
    }
    if (headless) issues.push(issue("setup-line-above-headings", { line }));
    const column = lineBelow(parts.columns, row);
    const mix = lineBelow(parts.mixes, row);
    const setting = lineBelow(parts.settings, row);
    for (const wrong of [
      column && columns.add(line, columnLine(column, line)),
      mix && mixes.add(line, mixLine(mix, line, decimal)),
      setting && settings.add(line, settingLine(setting, line, decimal)),
    ])
      if (wrong) issues.push(wrong);
  }
  const specified = mixes.agreed();
  const { scaleEnd, datesFrom, ...everywhere } = Object.fromEntries(
    [...settings.agreed().values()].map(({ is, value }) => [is, value]),
  ) as Pick<Setup, "scaleEnd" | "datesFrom"> & FieldValues;
  return {
    columns: [...columns.agreed().values()],
    specificationFor: (mix) => specified.get(plainly(mix)),
    limitsAir: [...specified.values()].some(({ air }) => Object.keys(air).length > 0),
    fields: new Set(
      [...specified.values()].flatMap(({ values }) => Object.keys(values) as FieldId[]),
    ),
    ...(scaleEnd !== undefined && { scaleEnd }),
    ...(datesFrom !== undefined && { datesFrom }),
    everywhere,
    issues: headless ? [issue("setup-without-headings")] : issues,
  };
}
