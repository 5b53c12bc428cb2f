import { candidatesFor, otherMatterIn, SURE, THINKABLE, type Candidate } from "./candidates";
import { evidenceOf } from "./evidence";
import type { FieldId } from "./fields";
import { keptFor } from "./kept-columns";
import { numberedReadings } from "./numbered-readings";
import type { KeptColumn, SheetColumn } from "./recognition";
import { remembered } from "./remembered";
import type { Guard } from "./terms";
import { tellings, type Told, type Tellings } from "./told";
import { languagesOf, understand } from "./words-in-header";

/** What is so much less likely than a column's likeliest field is not thought of. */
const FAR_BEHIND = 25;

/** A title and the header below it are seldom one header that is broken over two rows. */
const READ_AS_BROKEN = 6;

/** Everything that is known of a column before the columns are looked at together. */
export interface Considered {
  readonly told: Told;
  readonly candidates: readonly Candidate[];
  readonly other?: Candidate<Guard>;
  readonly kept?: KeptColumn;
}

/**
 * Looks at each column by itself.
 *
 * @param written The columns as they stand in the sheet, by which settings name them.
 * @param columns The same without what all their headers have in common.
 */
export function consider(
  written: readonly SheetColumn[],
  columns: readonly SheetColumn[],
  kept: readonly KeptColumn[],
): readonly Considered[] {
  const languages = languagesOf(columns.flatMap(({ headers }) => headers));
  const spoken = languages.map(({ language }) => language).join();
  const told = columns.map(({ headers, cells }, at) =>
    tellings(isBelowAnothers(columns, at) ? [] : headers, evidenceOf(cells), (header) =>
      understand(header, languages),
    ),
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

/** A blank below a title that stands over several columns: the title names the first of them at most. */
function isBelowAnothers(columns: readonly SheetColumn[], at: number): boolean {
  const { headers } = columns[at]!;
  if (headers.length < 2 || headers.at(-1)!.trim() !== "") return false;
  const before = columns[at - 1]?.headers ?? [];
  const titles = headers.slice(0, -1);
  return before.length === headers.length && titles.every((title, i) => title === before[i]);
}

/** What only the readings' own test has: a title above changes nothing of it. */
const OF_ONE_TEST: ReadonlySet<FieldId> = new Set<FieldId>(["foam", "settle", "cups", "alcohol"]);

const saysByItself = ({ field, score }: Candidate) => score >= SURE && OF_ONE_TEST.has(field);

/** What a column may be by itself, in each of the ways to read its header rows. */
function thoughtOf(tellings: Tellings): Considered {
  const likeliest = new Map<FieldId, Candidate>();
  let other: Candidate<Guard> | undefined;
  for (const [way, told] of tellings.entries()) {
    const off = way * READ_AS_BROKEN;
    // "Settling" below "Roll 1" is no first reading: it says by itself what it is.
    const own = way > 0 ? [...likeliest.values()].filter(saysByItself) : [];
    for (const found of candidatesFor(told)) {
      if (own.length > 0 && !likeliest.has(found.field)) continue;
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
