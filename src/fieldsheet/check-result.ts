import type { Columns } from "../reading/column-place";
import type { FieldId } from "../reading/fields";
import type { SheetReading } from "../reading/sheet-reading";
import type { NotLookedAt } from "./not-looked-at";
import type { Finding } from "./finding";
import type { SheetTests } from "./sheet-tests";
import type { TestResult } from "./test-result";

/** What a check says about the tests of a sheet. */
export interface CheckResult {
  readonly reading: SheetReading;
  /** The fields that were found; those of the reading. */
  readonly columns: Columns;
  /** The fields that the setup gives for some test. */
  readonly given: ReadonlySet<FieldId>;
  readonly results: readonly TestResult[];
  /** The same tests, with what is looked up across them. */
  readonly tests: SheetTests;
  /** Every finding once: those of the sheet as a whole first, then test by test. */
  readonly findings: readonly Finding[];
  /** What was not looked at, because the sheet does not record it. */
  readonly notLookedAt: readonly NotLookedAt[];
}
