import type { CellValue } from "../measure/cell-value";
import { assign, type Assigned } from "./assignment";
import {
  bindingTitle,
  candidatesFor,
  guardIn,
  otherMatterIn,
  SURE,
  THINKABLE,
  type Candidate,
} from "./candidates";
import type { ColumnPlace, Columns } from "./column-place";
import { withoutCommonWords } from "./common-words";
import { DECIDING, decidingByContents, decidingByWords } from "./deciding";
import { evidenceOf } from "./evidence";
import { FIELDS, type FieldId } from "./fields";
import { fitOf } from "./fit";
import { keptFor } from "./kept-columns";
import { numberedReadings } from "./numbered-readings";
import type {
  Because,
  KeptColumn,
  ReadColumn,
  RecognisedColumn,
  Recognition,
  SheetColumn,
} from "./recognition";
import { remembered } from "./remembered";
import type { Guard } from "./terms";
import { tellings, writtenHeaders, type Told, type Tellings } from "./told";
import { languagesOf, understand } from "./words-in-header";

/** By how much what is read has to be better than anything else. */
const CLEAR_LEAD = 8;
/** What is so much less likely than a column's likeliest field is not thought of. */
const FAR_BEHIND = 25;

/** A title and the header below it are seldom one header that is broken over two rows. */
const READ_AS_BROKEN = 6;

/** So many other columns are named in a sentence. */
const MOST_NAMED = 3;

/** Everything that is known of a column before the columns are looked at together. */
interface Considered {
  readonly told: Told;
  readonly candidates: readonly Candidate[];
  readonly other?: Candidate<Guard>;
  readonly kept?: KeptColumn;
}

/**
 * Recognises what the columns of a field sheet hold, from their headers, the titles above them and what
 * stands in their cells, all columns together.
 *
 * A column is read only where its words say the field outright and nothing else comes near; a field for
 * which two columns come near is asked about, and never the left one taken.
 *
 * @param columns The columns of the sheet, in order.
 * @param kept What the user has said of columns; it outweighs everything else.
 * @returns For every column what it is taken for and why, and the column of each field that is read.
 */
export function recognise(
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[] = [],
): Recognition {
  const considered = consider(columns, withoutCommonWords(columns), kept);
  const assigned = assign(
    considered.flatMap(({ candidates }, column) =>
      candidates.map(({ field, score }) => ({ column, field, score })),
    ),
  );
  const read = readOf(considered, assigned);
  const found = new Set(read.values());
  const missing = (field: FieldId) => !found.has(field);
  const header = (index: number) => headerOf(columns[index]!);
  const among = { considered, read, missing, header, rivals: rivalsIn(considered) };
  const all = considered.map((column, index) => describe(column, index, among));
  return { all, columns: columnsOf(all) };
}

function consider(
  written: readonly SheetColumn[],
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[],
): readonly Considered[] {
  const languages = languagesOf(columns.flatMap(({ headers }) => headers));
  const spoken = languages.map(({ language }) => language).join();
  const told = columns.map(({ headers, cells }) =>
    tellings(headers, evidenceOf(cells), (header) => understand(header, languages)),
  );
  const numbered = numberedReadings(told.map(([first]) => first));
  const setting = keptFor(written, kept);
  return numbered.map((first, index) => {
    const keptAs = setting[index];
    if (keptAs) {
      const field = keptAs.field;
      if (field === "not ours") return { told: first, candidates: [], kept: keptAs };
      const sure = { field, score: 1000, opposite: false, words: [], fit: 0 as const };
      return { told: first, candidates: [sure], kept: keptAs };
    }
    const all: Tellings = [first, ...told[index]!.slice(1)];
    const wordsAlone = first.cells.count === 0 && first === told[index]![0];
    if (!wordsAlone) return thoughtOf(all);
    return thought({ all, key: [spoken, ...columns[index]!.headers].join("\n") });
  });
}

/** What a column may be by itself, in each of the ways to read its header rows. */
function thoughtOf(tellings: Tellings): Considered {
  const likeliest = new Map<FieldId, Candidate>();
  let other: Candidate<Guard> | undefined;
  for (const [way, told] of tellings.entries()) {
    const off = way * READ_AS_BROKEN;
    for (const found of candidatesFor(told)) {
      const candidate = { ...found, score: found.score - off };
      if (candidate.score > (likeliest.get(found.field)?.score ?? THINKABLE - 1)) {
        likeliest.set(found.field, candidate);
      }
    }
    const matter = otherMatterIn(told);
    if (matter && matter.score - off > (other?.score ?? THINKABLE - 1)) {
      other = { ...matter, score: matter.score - off };
    }
  }
  const all = [...likeliest.values()].sort((a, b) => b.score - a.score);
  const best = Math.max(all[0]?.score ?? 0, other?.score ?? 0);
  const isOther = other !== undefined && other.score >= best;
  const near = all.filter(({ score }) => score > best - FAR_BEHIND);
  return { told: tellings[0], candidates: isOther ? [] : near, other };
}

/** The same for columns of which there are no cells, such as in the search for the header row. */
const thought = remembered(
  ({ all }: { readonly all: Tellings; readonly key: string }) => thoughtOf(all),
  ({ key }) => key,
);

/** The fields that are read for sure, by column. */
function readOf(
  considered: readonly Considered[],
  assigned: readonly Assigned[],
): ReadonlyMap<number, FieldId> {
  const sure = assigned.filter(({ score, lead }) => score >= SURE && lead >= CLEAR_LEAD);
  return new Map(
    sure.filter(({ column }) => considered[column]).map(({ column, field }) => [column, field]),
  );
}

interface AllColumns {
  readonly considered: readonly Considered[];
  readonly read: ReadonlyMap<number, FieldId>;
  readonly missing: (field: FieldId) => boolean;
  readonly header: (index: number) => string;
  /** For each field the columns that may be it, the likeliest first. */
  readonly rivals: ReadonlyMap<FieldId, readonly Rival[]>;
}

interface Rival {
  readonly index: number;
  readonly score: number;
}

function rivalsIn(considered: readonly Considered[]): ReadonlyMap<FieldId, readonly Rival[]> {
  const rivals = new Map<FieldId, Rival[]>();
  considered.forEach(({ candidates }, index) => {
    for (const { field, score } of candidates) {
      const known = rivals.get(field);
      if (known) known.push({ index, score });
      else rivals.set(field, [{ index, score }]);
    }
  });
  for (const list of rivals.values()) list.sort((a, b) => b.score - a.score || a.index - b.index);
  return rivals;
}

function describe(column: Considered, index: number, among: AllColumns): RecognisedColumn {
  const { told, candidates, other, kept } = column;
  const header = among.header(index);
  const at = { index, header };
  if (kept?.field === "not ours") {
    return { ...at, state: "not ours", guard: "setup", because: because("not-ours-kept") };
  }
  const field = among.read.get(index);
  if (field) return readColumn(column, at, field);
  const asked = candidates.filter(
    ({ field, score }) =>
      among.missing(field) && score > among.rivals.get(field)![0]!.score - CLEAR_LEAD,
  );
  if (asked.length > 0) return askedColumn(column, at, asked, among);
  const nearer = candidates[0];
  if (nearer) return lostColumn(at, candidates, nearer, among);
  const words = decidingByWords(told).filter(
    (field) =>
      among.missing(field) && (told.cells.yesNo > 0 || fitOf(field, told.cells, told.unit) >= 0),
  );
  const guard = guardIn(told) ?? bindingTitle(told);
  const speaks = words.some((field) => fitOf(field, told.cells, told.unit) > 0);
  if (guard && !speaks) {
    const what = guard.word;
    return {
      ...at,
      state: "not ours",
      guard: guard.guard,
      because: because("not-ours", { header, what }),
    };
  }
  if (!guard && other && !speaks) {
    const what = other.words.join(" ");
    return {
      ...at,
      state: "not ours",
      guard: other.field,
      because: because("not-ours", { header, what }),
    };
  }
  const nothingThere = told.cells.count === 0 && words.length === 0;
  if (nothingThere) return { ...at, state: "empty", because: because("holds-nothing") };
  const mayBe = words.length > 0 ? words : decidingByContents(told, among.missing);
  const why = header === "" ? because("no-header") : because("nothing-known", { header });
  return { ...at, state: "unknown", mayBe, decides: mayBe.length > 0, because: why };
}

type At = { readonly index: number; readonly header: string };

function readColumn(
  { told, candidates, kept }: Considered,
  at: At,
  field: FieldId,
): RecognisedColumn {
  const { score, words, fit, opposite } = candidates.find(
    (candidate) => candidate.field === field,
  )!;
  const { header } = at;
  const name = FIELDS[field].label;
  const why = kept
    ? because("read-as-kept", { field: name })
    : words.join() === told.own.text
      ? because("read-as-headed", { header, field: name })
      : because(fit > 0 ? "read-as-said-and-holds" : "read-as-said", {
          words: words.join(", "),
          field: name,
        });
  const unit = kept?.unit ?? [told.own, ...told.titles].find(({ unit }) => unit)?.unit?.unit;
  return {
    ...at,
    state: "read",
    field,
    score: Math.min(score, 100),
    ...(unit !== undefined && { unit }),
    ...(opposite && { opposite }),
    because: why,
  };
}

function askedColumn(
  { told }: Considered,
  at: At,
  asked: readonly Candidate[],
  among: AllColumns,
): RecognisedColumn {
  const fields = asked.map(({ field }) => field);
  const { header } = at;
  const names = fields.map((field) => FIELDS[field].label).join(", ");
  const best = asked[0]!;
  const rivals = among.rivals
    .get(best.field)!
    .filter(({ index }) => index !== at.index)
    .slice(0, MOST_NAMED)
    .map(({ index }) => `“${among.header(index)}”`);
  const why =
    best.score >= SURE && rivals.length > 0
      ? because("columns-alike", {
          header,
          others: rivals.join(", "),
          field: FIELDS[best.field].label,
        })
      : best.fit < 0
        ? because("cells-hold-other", { header, fields: names })
        : fields.length > 1
          ? because("could-be-several", { header, fields: names })
          : because("not-said-outright", { header, fields: names });
  const speaks = decidingByWords(told).filter(among.missing);
  const candidates = [...new Set([...fields, ...speaks])];
  const decides = candidates.some((field) => DECIDING.has(field));
  return { ...at, state: "asked", candidates, decides, because: why };
}

/** A column whose fields are all read from other columns. */
function lostColumn(
  at: At,
  candidates: readonly Candidate[],
  { field }: Candidate,
  among: AllColumns,
): RecognisedColumn {
  const other = among.header(among.rivals.get(field)![0]!.index);
  const mayBe = candidates.map((candidate) => candidate.field);
  return {
    ...at,
    state: "unknown",
    mayBe,
    decides: mayBe.some((may) => DECIDING.has(may)),
    because: because("another-is-nearer", { header: at.header, field: FIELDS[field].label, other }),
  };
}

function because(say: Because["say"], values: Because["values"] = {}): Because {
  return { say, values };
}

function headerOf(column: SheetColumn): string {
  return writtenHeaders(column.headers).at(-1) ?? "";
}

function columnsOf(all: readonly RecognisedColumn[]): Columns {
  return Object.fromEntries(
    all.flatMap((column) => (column.state === "read" ? [[column.field, placeOf(column)]] : [])),
  );
}

function placeOf({ index, header, unit, opposite }: ReadColumn): ColumnPlace {
  return { index, header, unit, ...(opposite && { opposite }) };
}

/** Columns of a table from its header row and its rows. */
export function columnsFrom(
  headers: readonly string[],
  rows: readonly (readonly CellValue[])[],
): readonly SheetColumn[] {
  return headers.map((header, index) => ({
    headers: [header],
    cells: rows.map((row) => row[index] ?? null),
  }));
}
