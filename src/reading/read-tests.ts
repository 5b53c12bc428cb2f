import type { Issue } from "../measure/issue";
import { FIELDS, type FieldId } from "./fields";
import type { FieldRecord, FieldValues, Unreadable } from "./record";
import type { TestersWord } from "./testers-word";

const FIELD_IDS = Object.keys(FIELDS) as FieldId[];
const NUMBER_OF: ReadonlyMap<FieldId, number> = new Map(FIELD_IDS.map((field, i) => [field, i]));

const NOTHING_UNREADABLE: Unreadable = Object.freeze({});

/** The values of a field for all tests; `undefined` where a test has none. */
export type ValueColumn = unknown[];

/**
 * What was read of the tests of a sheet: the values column by column, and aside what cannot be read or
 * was said of a test as a whole. The values of a test are a view of the columns, so that a long sheet
 * takes little room.
 */
export class ReadTests {
  private readonly columns: (ValueColumn | undefined)[] = FIELD_IDS.map(() => undefined);
  private readonly unreadable = new Map<number, Unreadable>();
  private readonly words = new Map<number, TestersWord>();

  /** @param blank For each position whether there is no test in it. */
  constructor(readonly blank: readonly boolean[]) {}

  /** The column of a field, which is filled while it is read. */
  column(field: FieldId): ValueColumn {
    return (this.columns[NUMBER_OF.get(field)!] ??= new Array<unknown>(this.blank.length));
  }

  /** Keeps why the cell of a field cannot be read. */
  cannotRead(record: number, field: FieldId, issue: Issue): void {
    this.unreadable.set(record, { ...this.unreadable.get(record), [field]: issue });
  }

  /** Keeps what somebody wrote of a test as a whole. */
  say(record: number, word: TestersWord): void {
    this.words.set(record, word);
  }

  wordOf(record: number): TestersWord | undefined {
    return this.words.get(record);
  }

  at(record: number): FieldRecord {
    return {
      record,
      blank: this.blank[record]!,
      values: new ValuesOfTest(this.columns, record) as FieldValues,
      unreadable: this.unreadable.get(record) ?? NOTHING_UNREADABLE,
      testersWord: this.words.get(record),
    };
  }
}

/** The values of a test by field, taken out of their columns. */
class ValuesOfTest {
  constructor(
    readonly columns: readonly (ValueColumn | undefined)[],
    readonly record: number,
  ) {}
}

FIELD_IDS.forEach((field, i) => {
  const get = function (this: ValuesOfTest) {
    return this.columns[i]?.[this.record];
  };
  Object.defineProperty(ValuesOfTest.prototype, field, { get });
});

/** The same test with values of fields of which it has none itself. */
export function withValues(test: FieldRecord, more: FieldValues): FieldRecord {
  const added = Object.getOwnPropertyDescriptors(more);
  return { ...test, values: Object.create(test.values, added) as FieldValues };
}
