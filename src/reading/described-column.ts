import { SURE, type Candidate } from "./candidates";
import type { Considered } from "./considered";
import { DECIDING, decidingByContents, decidingByWords } from "./deciding";
import { fieldName, type FieldId } from "./fields";
import { fitOf } from "./fit";
import { bindingTitle, guardIn } from "./guards";
import type { Because, RecognisedColumn } from "./recognition";

/** By how much what is read has to be better than anything else. */
export const CLEAR_LEAD = 8;
/** So many other columns are named in a sentence. */
const MOST_NAMED = 3;

/** What is known of all columns together. */
export interface AllColumns {
  readonly considered: readonly Considered[];
  readonly read: ReadonlyMap<number, FieldId>;
  readonly missing: (field: FieldId) => boolean;
  readonly header: (index: number) => string;
  /** For each field the columns that may be it, the likeliest first. */
  readonly rivals: ReadonlyMap<FieldId, readonly Rival[]>;
}

/** A column that may be a field. */
export interface Rival {
  readonly index: number;
  readonly score: number;
}

/** What is said of a column, beside all others. */
export function describe(column: Considered, index: number, among: AllColumns): RecognisedColumn {
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
  // A running number may name the test where nothing else does.
  const isAlone = among.missing("sample") && among.missing("load");
  if (!guard && other?.field === "running number" && isAlone && told.cells.count > 0) {
    const fields = { all: [fieldName("sample")] };
    const why = because("not-said-outright", { header, fields });
    return { ...at, state: "asked", candidates: ["sample"], decides: false, because: why };
  }
  const cups = among.missing("cups") && mayBeCups(told);
  if (!guard && other && !speaks && !cups) {
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
  const mayBe = cups
    ? (["cups"] as const)
    : words.length > 0
      ? words
      : byContents(told, among.missing);
  const why = header === "" ? because("no-header") : because("nothing-known", { header });
  return { ...at, state: "unknown", mayBe, decides: mayBe.length > 0, because: why };
}

/** A column of units of the alcohol says that its amounts stand somewhere. */
function byContents(told: Considered["told"], missing: AllColumns["missing"]): readonly FieldId[] {
  const found = decidingByContents(told, missing);
  const isUnknown = told.own.words.every(({ terms }) => terms.length === 0);
  const hasUnits = missing("alcohol") && !missing("alcoholUnit");
  const mayBeAmounts = hasUnits && isUnknown && told.cells.number > 0.65;
  return mayBeAmounts && !found.includes("alcohol") ? [...found, "alcohol"] : found;
}

/** The most cups that go into one test, or nearly so. */
const MOST_CUPS = 6;

/** Water in small whole numbers of no unit may as well be counted in cups. */
function mayBeCups({ own, unit, cells }: Considered["told"]): boolean {
  const isWater = own.words.some(({ terms }) => terms.includes("water"));
  const isCounted = cells.number > 0.65 && cells.whole === 1 && cells.most <= MOST_CUPS;
  return isWater && unit === undefined && isCounted && cells.least >= 0;
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
  const name = fieldName(field);
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
  const names = { all: fields.map(fieldName) };
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
          field: fieldName(best.field),
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
    because: because("another-is-nearer", { header: at.header, field: fieldName(field), other }),
  };
}

function because(say: Because["say"], values: Because["values"] = {}): Because {
  return { say, values };
}
