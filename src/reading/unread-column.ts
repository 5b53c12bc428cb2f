import type { BlockPlace } from "./block-place";
import type { FieldId } from "./fields";
import type { Because } from "./recognition";

/** What can be open of the tests themselves. */
export type AskedOfTests =
  | "amount-told"
  | "words-may-void"
  | "title-of-another-method"
  | "may-be-by-pressure"
  | "rows-of-readings"
  | "rows-may-be-readings";

/** A column that holds something and was not read as any field. */
export interface UnreadColumn {
  /** Position in the block, from 0. */
  readonly index: number;
  /** Where it stands, where that is not in the row of the headers. */
  readonly place?: BlockPlace;
  /** The header as it stands in the sheet; "" where there is none. */
  readonly header: string;
  /** What it may hold, by its words, its unit or its cells; none where nothing speaks for a field. */
  readonly mayBe: readonly FieldId[];
  /** Whether one of these could decide a test, so that the tests it touches are not called valid. */
  readonly decides: boolean;
  readonly because: Because;
  /** What is asked of the tests themselves, where it is not what the column holds. */
  readonly asks?: AskedOfTests;
  /** The tests for which it holds something that could decide. */
  readonly touches: (record: number) => boolean;
  /** The tests for which it holds anything, where these are more. */
  readonly holds?: (record: number) => boolean;
}

/** Asks of tests what decides whether they stand, at the place from which the question comes. */
export function askedOfTests(
  asks: AskedOfTests,
  at: Pick<UnreadColumn, "index" | "place" | "header">,
  touches: UnreadColumn["touches"],
): UnreadColumn {
  const because: Because = { say: asks, values: { title: at.header } };
  return { ...at, mayBe: [], decides: true, asks, because, touches };
}
