import { isBlank, quoted, shownValue, type CellValue } from "../measure/cell-value";
import { isIssue, issue, issueSentence, type Issue } from "../measure/issue";
import type { DecimalMark } from "../measure/number-from-cell";
import { specificationFromCell, toleranceFromCell } from "../measure/specification";
import { FIELDS, type FieldId } from "./fields";
import { GRAMMAR } from "./grammar";
import { plainly } from "./kept-columns";
import { limitsIn, type AirLimits } from "./limits-in";
import type { KeptColumn } from "./recognition";
import { readHeader } from "./units-in-header";

/** What people have written down of their sheets, once for all of them. */
export interface Setup {
  readonly columns: readonly KeptColumn[];
  /** What is specified for a mix; `undefined` where the setup does not say. */
  readonly specificationFor: (mix: string) => AirLimits | undefined;
  /** Whether there is a specification of any mix. */
  readonly specifies: boolean;
  /** Why lines, or all of it, cannot be used. None of them is applied. */
  readonly issues: readonly Issue[];
}

const COLUMN_HEADINGS = ["header", "taken for", "unit"] as const;
const LIMIT_HEADINGS = ["low", "high", "target", "tolerance"] as const;
/** The source of a specification is there for people. */
const MIX_HEADINGS = ["mix", ...LIMIT_HEADINGS, "source"] as const;

type ColumnHeading = (typeof COLUMN_HEADINGS)[number];
type MixHeading = (typeof MIX_HEADINGS)[number];

/** What stands below each heading of a part, in one line. */
type Line<Heading extends string> = Readonly<Partial<Record<Heading, CellValue>>>;

/** A setting, and on which line it stands. */
interface OnLine<T> {
  readonly line: number;
  readonly value: T;
}

/**
 * Reads a setup from plain cells: a table of columns (header, taken for, unit) and one of specifications
 * by mix (mix, low, high, target, tolerance, source), below or beside each other, with titles or blank
 * lines between them. Either may be absent. Nothing of a line is used unless all of it can be.
 */
export function readSetup(
  cells: readonly (readonly CellValue[])[],
  decimal: DecimalMark = ".",
): Setup {
  const issues: Issue[] = [];
  const columns = new Settings<KeptColumn>((line, { header }, before) =>
    issue("setup-header-twice", { line, header: quoted(header), before }),
  );
  const mixes = new Settings<AirLimits & { readonly mix: string }>((line, { mix }, before) =>
    issue("setup-mix-twice", { line, mix: quoted(mix), before }),
  );
  let parts: Parts = {};
  for (const [i, row] of cells.entries()) {
    const line = i + 1;
    if (row.every(isBlank)) continue;
    const headed = partsHeaded(row);
    if (headed) {
      parts = headed;
      issues.push(...headingsNotUsed(row, headed, line));
    } else if (!isTitle(cells, i)) {
      if (!parts.columns && !parts.mixes) issues.push(issue("setup-line-above-headings", { line }));
      const column = lineBelow(parts.columns, row);
      const mix = lineBelow(parts.mixes, row);
      for (const wrong of [
        column && columns.add(line, columnSetting(column, line), ({ header }) => header),
        mix && mixes.add(line, mixSetting(mix, line, decimal), (setting) => setting.mix),
      ])
        if (wrong) issues.push(wrong);
    }
  }
  const empty = cells.every((row) => row.every(isBlank));
  const headless = !empty && !parts.columns && !parts.mixes;
  const specified = new Map(mixes.agreed().map(({ value }) => [plainly(value.mix), value]));
  return {
    columns: columns.agreed().map(({ value }) => value),
    specificationFor: (mix) => specified.get(plainly(mix)),
    specifies: specified.size > 0,
    issues: headless ? [issue("setup-without-headings")] : issues,
  };
}

/** The settings of a part. Two that say different things of the same are both set aside. */
class Settings<T> {
  private readonly byName = new Map<string, OnLine<T>>();
  private readonly disputed = new Set<string>();

  constructor(private readonly twice: (line: number, value: T, before: number) => Issue) {}

  /** Takes a setting; what is wrong with it otherwise. */
  add(line: number, value: T | Issue, nameOf: (value: T) => string): Issue | undefined {
    if (isIssue(value)) return value;
    const name = plainly(nameOf(value));
    const before = this.byName.get(name);
    if (!before) {
      this.byName.set(name, { line, value });
      return undefined;
    }
    if (said(before.value) === said(value)) return undefined;
    this.disputed.add(name);
    return this.twice(line, value, before.line);
  }

  agreed(): readonly OnLine<T>[] {
    return [...this.byName].flatMap(([name, setting]) => (this.disputed.has(name) ? [] : setting));
  }
}

function said(value: unknown): string {
  return JSON.stringify(value).toLowerCase();
}

/** Where the headings of a part stand, from 0. */
type Places<Heading extends string> = Readonly<Partial<Record<Heading, number>>>;

/** The parts whose headings have been passed. */
interface Parts {
  readonly columns?: Places<ColumnHeading>;
  readonly mixes?: Places<MixHeading>;
}

/** The parts that a row heads; `undefined` where it is no row of headings. */
function partsHeaded(row: readonly CellValue[]): Parts | undefined {
  const columns = placesOf(COLUMN_HEADINGS, row);
  const mixes = placesOf(MIX_HEADINGS, row);
  const headsColumns = columns.header !== undefined && columns["taken for"] !== undefined;
  const headsMixes =
    mixes.mix !== undefined && LIMIT_HEADINGS.some((heading) => mixes[heading] !== undefined);
  if (!headsColumns && !headsMixes) return undefined;
  return { ...(headsColumns && { columns }), ...(headsMixes && { mixes }) };
}

function placesOf<Heading extends string>(
  headings: readonly Heading[],
  row: readonly CellValue[],
): Places<Heading> {
  const names = row.map((cell) => plainly(shownValue(cell)));
  const places = headings.map((heading) => [heading, names.indexOf(heading)] as const);
  return Object.fromEntries(places.filter(([, at]) => at >= 0)) as Places<Heading>;
}

function headingsNotUsed(row: readonly CellValue[], { columns, mixes }: Parts, line: number) {
  const used = new Set<number>([...Object.values(columns ?? {}), ...Object.values(mixes ?? {})]);
  return row.flatMap((heading, at) =>
    isBlank(heading) || used.has(at)
      ? []
      : [issue("setup-column-not-used", { line, heading: quoted(heading) })],
  );
}

/** A single cell right above a row of headings is its title. */
function isTitle(cells: readonly (readonly CellValue[])[], at: number): boolean {
  if (cells[at]!.filter((cell) => !isBlank(cell)).length > 1) return false;
  const next = cells.slice(at + 1).find((row) => !row.every(isBlank));
  return next !== undefined && partsHeaded(next) !== undefined;
}

/** `undefined` where a line has nothing below the headings of a part. */
function lineBelow<Heading extends string>(
  places: Places<Heading> | undefined,
  row: readonly CellValue[],
): Line<Heading> | undefined {
  const filled = (Object.entries(places ?? {}) as [Heading, number][]).filter(
    ([, at]) => !isBlank(row[at]),
  );
  if (filled.length === 0) return undefined;
  return Object.fromEntries(filled.map(([heading, at]) => [heading, row[at]!])) as Line<Heading>;
}

const FIELD_NAMED = new Map<string, FieldId | "not ours">([
  ["not ours", "not ours"],
  ...(Object.keys(FIELDS) as FieldId[]).flatMap((id): [string, FieldId][] => [
    [plainly(id), id],
    [plainly(FIELDS[id].label), id],
  ]),
]);

function columnSetting(cells: Line<ColumnHeading>, line: number): KeptColumn | Issue {
  const header = shownValue(cells.header).trim();
  const takenFor = shownValue(cells["taken for"]).trim();
  const unit = shownValue(cells.unit).trim();
  const named = quoted(header);
  if (header === "") return issue("setup-no-header", { line });
  if (takenFor === "") return issue("setup-nothing-taken-for", { line, header: named });
  const field = FIELD_NAMED.get(plainly(takenFor));
  if (!field) {
    return issue("setup-field-unknown", { line, header: named, field: quoted(takenFor) });
  }
  if (unit === "" || field === "not ours") return { header, field };
  const known = readHeader(unit).onlyUnit?.dimension;
  if (!known) return issue("setup-unit-unknown", { line, header: named, unit: quoted(unit) });
  return GRAMMAR[field].units.includes(known)
    ? { header, field, unit }
    : issue("setup-unit-does-not-fit", { line, unit, field: FIELDS[field].label });
}

function mixSetting(
  cells: Line<MixHeading>,
  line: number,
  decimal: DecimalMark,
): (AirLimits & { readonly mix: string }) | Issue {
  const mix = shownValue(cells.mix).trim();
  if (mix === "") return issue("setup-no-mix", { line });
  const values = {
    low: specificationFromCell(cells.low ?? null, decimal),
    high: specificationFromCell(cells.high ?? null, decimal),
    target: specificationFromCell(cells.target ?? null, decimal),
    tolerance: toleranceFromCell(cells.tolerance ?? null, decimal),
  };
  for (const heading of LIMIT_HEADINGS) {
    const value = values[heading];
    if (isIssue(value)) {
      return issue("setup-limit-unreadable", { line, heading, why: issueSentence(value) });
    }
  }
  const { low, high } = limitsIn(values as Parameters<typeof limitsIn>[0]);
  if (low === undefined && high === undefined) {
    return issue("setup-no-limits", { line, mix: quoted(mix) });
  }
  if (low !== undefined && high !== undefined && low > high) {
    return issue("setup-limits-crossed", { line, low, high });
  }
  return { mix, ...(low !== undefined && { low }), ...(high !== undefined && { high }) };
}
