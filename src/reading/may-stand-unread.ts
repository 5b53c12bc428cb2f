import type { FieldId } from "./fields";
import type { SheetReading } from "./sheet-reading";

/**
 * Whether a field may stand, for every test, in a column that was not read. Then what is said of that
 * column says it all, and "the sheet does not record it" beside it would contradict it.
 */
export function mayStandUnread(
  { unread, records }: Pick<SheetReading, "unread" | "records">,
  field: FieldId,
): boolean {
  return unread.some(
    ({ decides, mayBe, touches, holds = touches }) =>
      decides &&
      mayBe.includes(field) &&
      records.every(({ blank, record }) => blank || holds(record)),
  );
}
