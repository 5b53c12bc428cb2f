import type { NotLookedAt } from "../fieldsheet/not-looked-at";
import type { TestState } from "../fieldsheet/judged-test";
import type { Verdict } from "../acceptance/limits";
import type { Weight } from "../fieldsheet/finding";

/** Where something stands: the file, the sheet where it has sheets, and the row as people count it. */
interface Where {
  readonly file: string;
  readonly sheet?: string;
  readonly row?: number;
}

/** One thing found. */
export interface SaidFinding extends Where {
  readonly kind: "finding";
  /** The cell as people write it; absent for what concerns the sheet as a whole. */
  readonly cell?: string;
  readonly sample: string;
  readonly rule: string;
  readonly weight: Weight;
  readonly column: string;
  readonly value: string | number | boolean;
  readonly message: string;
}

/** One test, as FRESH.CHECK has it. */
export interface SaidTest extends Where {
  readonly kind: "test";
  readonly sample: string;
  readonly test: TestState;
  readonly air?: number;
  readonly specification?: Verdict;
}

/** What was done with a sheet, said once behind its findings. */
export interface SaidSheet extends Where {
  readonly kind: "sheet";
  /** Where the tests stand, as "A3:L6"; absent for a stream. */
  readonly area?: string;
  readonly tests: number;
  readonly valid: number;
  readonly void: number;
  readonly incomplete: number;
  readonly findings: number;
  readonly notLookedAt: readonly NotLookedAt[];
}

/** Something that was not read, and why. */
export interface SaidNotRead extends Where {
  readonly kind: "not read";
  readonly message: string;
  /** False where nothing is amiss, as with a sheet that holds no tests beside one that does. */
  readonly amiss: boolean;
}

/** Whatever the command line says of files. */
export type Said = SaidFinding | SaidTest | SaidSheet | SaidNotRead;
