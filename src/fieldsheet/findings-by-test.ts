import type { Finding } from "./finding";
import type { RemarkAt, Remark, Rule, SheetRule } from "./rule";
import { RULES } from "./rules";
import type { UnreadFinding } from "./unread-findings";

const NOTHING_FOUND: readonly Finding[] = [];

/** What is found in a sheet, test by test and of the sheet as a whole. */
export class FindingsByTest {
  readonly ofTheSheet: Finding[] = [];
  private readonly own: (readonly Finding[] | undefined)[];
  /** Of the sheet as a whole, and changing every test of it. */
  private readonly touching: Finding[] = [];
  /** Of the sheet as a whole, and resting on some tests. */
  private readonly behind = new Map<number, Finding[]>();

  /** @param undecided Columns that were not read and may decide the tests that they touch. */
  constructor(
    tests: number,
    private readonly undecided: readonly UnreadFinding[],
  ) {
    this.own = new Array<undefined>(tests);
  }

  /** Whether a column that was not read may decide a test. */
  leavesOpen(record: number): boolean {
    return this.undecided.some(({ column }) => column.touches(record));
  }

  /** Keeps what was found in a test by itself. */
  keep(record: number, found: Finding[]): void {
    this.own[record] = withoutYielded(found);
  }

  /** Keeps what a rule says that looks across the sheet. */
  add(rule: SheetRule, remark: RemarkAt): void {
    const { record, behind = [] } = remark;
    const finding = findingOf(rule, record, remark);
    if (record !== null) this.own[record] = [...(this.own[record] ?? []), finding];
    else this.ofTheSheet.push(finding);
    if (record === null && rule.touchesEveryTest) this.touching.push(finding);
    for (const each of behind) {
      this.own[each] = this.own[each]?.filter((own) => own.rule !== rule.speaksFor);
      this.behind.set(each, [...(this.behind.get(each) ?? []), finding]);
    }
  }

  /** What was found in a test, behind what was found of the whole sheet that changes it. */
  of(record: number): readonly Finding[] {
    const own = this.own[record] ?? NOTHING_FOUND;
    const behind = this.behind.get(record) ?? NOTHING_FOUND;
    const touched = this.undecided.filter(({ column }) => column.touches(record));
    if (touched.length + this.touching.length + behind.length === 0) return own;
    return [...touched.map(({ finding }) => finding), ...this.touching, ...behind, ...own];
  }

  /** What was found in tests by themselves, test by test. */
  ofTests(): readonly Finding[] {
    return this.own.flatMap((found) => found ?? NOTHING_FOUND);
  }
}

/** A remark of a rule as a finding. */
export function findingOf(
  rule: Rule,
  record: number | null,
  {
    field,
    place,
    say = rule.says[0]!,
    values = {},
    causes,
    behind,
  }: Remark & Partial<Pick<RemarkAt, "behind">>,
): Finding {
  const finding = { record, field, rule: rule.id, weight: rule.weight, say, values };
  if (!place && !causes && !behind) return finding;
  return {
    ...finding,
    ...(place && { place }),
    ...(causes && { causes }),
    ...(behind && { behind }),
  };
}

const YIELDING = new Map(RULES.flatMap(({ id, yieldsTo }) => (yieldsTo ? [[id, yieldsTo]] : [])));

/** Without what a rule says of a cell of which another, that goes first, speaks as well. */
function withoutYielded(findings: Finding[]): Finding[] {
  if (!findings.some(({ rule }) => YIELDING.has(rule))) return findings;
  return findings.filter(({ rule, field }) => {
    const first = YIELDING.get(rule);
    return !first || !findings.some((other) => other.field === field && first.includes(other.rule));
  });
}
