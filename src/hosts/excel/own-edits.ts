import { excelCan } from "./abilities";

/** How long an event may come after the writing that caused it, ms. */
const LATE = 250;

/**
 * Tells events that we caused ourselves from those of the user.
 *
 * Newer versions of Excel say who caused an event. Before that, whatever comes while we write, or
 * shortly after, is taken as ours.
 */
export class OwnEdits {
  private writing = 0;
  private quietFrom = 0;

  /** Does something that writes to the workbook. */
  async during<T>(write: () => Promise<T>): Promise<T> {
    this.writing += 1;
    try {
      return await write();
    } finally {
      this.writing -= 1;
      this.quietFrom = Date.now() + LATE;
    }
  }

  /** Whether we caused an event. */
  caused(event: { readonly triggerSource?: string }): boolean {
    if (excelCan("eventCause")) return event.triggerSource === "ThisLocalAddin";
    return this.writing > 0 || Date.now() < this.quietFrom;
  }
}
