import type { catalogue, SentenceId } from "../messages/catalogue";
import type { ValuesFor, Values } from "../messages/sentence";
import type { BlockPlace } from "../reading/block-place";
import type { FieldId } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { Cause, Weight } from "./finding";
import type { DecidedTest, JudgedTest } from "./judged-test";
import type { SheetTests } from "./sheet-tests";

/** A sentence and its values; the first one that a rule declares is meant where none is named. */
type Said<Id extends SentenceId, First> = {
  [I in Id]: (I extends First ? { readonly say?: I } : { readonly say: I }) &
    (ValuesFor<typeof catalogue, I> extends [infer V]
      ? { readonly values: V }
      : { readonly values?: undefined });
}[Id];

/** What a rule says about one test, in one of the sentences that it declares. */
export type RemarkIn<Says extends readonly SentenceId[]> = {
  /** The cell to point at; null for the test as a whole. */
  readonly field: FieldId | null;
  readonly place?: BlockPlace | undefined;
  readonly causes?: readonly Cause[];
} & Said<Says[number], Says[0]>;

/** What a rule that looks across the sheet says, about a test or, with null, the sheet as a whole. */
export type RemarkAtIn<Says extends readonly SentenceId[]> = RemarkIn<Says> & {
  readonly record: number | null;
  readonly behind?: readonly number[];
};

/** A remark of any rule. */
export interface Remark {
  readonly field: FieldId | null;
  /** The cell to point at, where it is that of no field. */
  readonly place?: BlockPlace | undefined;
  readonly say?: SentenceId;
  readonly values?: Values;
  readonly causes?: readonly Cause[];
}

/** A remark of a rule that looks across the sheet. */
export interface RemarkAt extends Remark {
  readonly record: number | null;
  /** Tests that a remark about the sheet as a whole rests on. */
  readonly behind?: readonly number[];
}

interface Declared<Says extends readonly SentenceId[] = readonly SentenceId[]> {
  /** Plain words with hyphens. */
  readonly id: string;
  /** Fields that must be in the sheet for the rule to speak at all. */
  readonly needs: readonly FieldId[];
  /** Fields of which one at least must be in the sheet as well. */
  readonly needsOneOf?: readonly FieldId[];
  /** Every sentence that it can say; the first is the one that it says unless it names another. */
  readonly says: Says;
  /** Rules that go first: where one of them speaks of the same cell, this one is silent. */
  readonly yieldsTo?: readonly string[];
  /** What the rule rests on, in our own words, with the source and how far it is trusted. */
  readonly basis: string;
}

interface LooksAtATest {
  /** Whether it also looks at a test that was made by another method. */
  readonly anyMethod?: true;
}

type Remarks = Remark | readonly Remark[] | undefined;
type SaidIn<Says extends readonly SentenceId[]> =
  RemarkIn<Says> | readonly RemarkIn<Says>[] | undefined;

/** A rule that voids a test. It looks before it is known whether the test stands. */
export interface VoidRule extends Declared, LooksAtATest {
  readonly kind: "voids a test";
  readonly weight: "void";
  readonly look: (test: JudgedTest, sheet: SheetReading) => Remarks;
}

/** A rule that looks at one test, once it is known whether it stands. */
export interface TestRule extends Declared, LooksAtATest {
  readonly kind: "looks at a test";
  readonly weight: Exclude<Weight, "void">;
  readonly look: (test: DecidedTest, sheet: SheetReading) => Remarks;
}

/**
 * What a rule says of a sheet, one by one. Where a sheet may be long and looking takes its time it says
 * `undefined` now and then: nothing yet, so that the page can be used meanwhile.
 */
type InPieces<R> = Iterable<R | undefined>;

/** A rule that looks across the sheet. */
export interface SheetRule extends Declared {
  readonly kind: "looks across the sheet";
  readonly weight: Exclude<Weight, "void">;
  /** Whether what it says of the sheet as a whole changes the air of every test. */
  readonly touchesEveryTest?: true;
  /** A rule that is silent about the tests behind a remark of this one, which says it of all of them. */
  readonly speaksFor?: string;
  readonly look: (tests: SheetTests, sheet: SheetReading) => InPieces<RemarkAt>;
}

export type Rule = VoidRule | TestRule | SheetRule;

type Given<R extends Rule, Says extends readonly SentenceId[], Look> = Omit<
  R,
  "kind" | "weight" | "look" | "says"
> & { readonly says: Says; readonly look: Look };

/** Declares a rule that voids a test. What it says is checked against the sentences it declares. */
export function voidRule<const Says extends readonly SentenceId[]>(
  rule: Given<VoidRule, Says, (test: JudgedTest, sheet: SheetReading) => SaidIn<Says>>,
): VoidRule {
  return { kind: "voids a test", weight: "void", ...rule } as VoidRule;
}

/** Declares a rule that looks at one test. */
export function testRule<const Says extends readonly SentenceId[]>(
  rule: Given<TestRule, Says, (test: DecidedTest, sheet: SheetReading) => SaidIn<Says>> &
    Pick<TestRule, "weight">,
): TestRule {
  return { kind: "looks at a test", ...rule } as TestRule;
}

/** Declares a rule that looks across the sheet. */
export function sheetRule<const Says extends readonly SentenceId[]>(
  rule: Given<
    SheetRule,
    Says,
    (tests: SheetTests, sheet: SheetReading) => InPieces<RemarkAtIn<Says>>
  > &
    Pick<SheetRule, "weight">,
): SheetRule {
  return { kind: "looks across the sheet", ...rule } as SheetRule;
}
