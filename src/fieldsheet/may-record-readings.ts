import { READING_FIELDS } from "../reading/fields";
import { mayStandUnread } from "../reading/may-stand-unread";
import type { SheetReading } from "../reading/sheet-reading";

/** Whether a sheet has a column of readings, or one that was not read and may be of readings. */
export function mayRecordReadings(sheet: SheetReading): boolean {
  return READING_FIELDS.some((field) => sheet.has(field) || mayStandUnread(sheet, field));
}
