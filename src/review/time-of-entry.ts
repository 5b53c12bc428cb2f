const DAY_ZERO = Date.UTC(1899, 11, 30);
const MILLISECONDS_IN_A_DAY = 86_400_000;
const WRITTEN = /^\d{4}-\d{2}-\d{2} \d{2}:\d{2}(:\d{2})?$/;

/** A moment as a review writes it: "2026-05-31 14:05:09", by the clock of this machine. */
export function timeText(moment: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  const date = [moment.getFullYear(), two(moment.getMonth() + 1), two(moment.getDate())];
  const time = [moment.getHours(), moment.getMinutes(), moment.getSeconds()].map(two);
  return `${date.join("-")} ${time.join(":")}`;
}

/**
 * The time of a line as it stands in a cell, in the form in which it is written: a text, or the number
 * that a spreadsheet makes of it when somebody types over it. `undefined` for anything else.
 */
export function timeOf(cell: unknown): string | undefined {
  if (typeof cell === "string") return WRITTEN.test(cell.trim()) ? cell.trim() : undefined;
  if (typeof cell !== "number" || cell < 1 || cell > 2_958_465) return undefined;
  const whole = new Date(DAY_ZERO + Math.round(cell * 86_400) * (MILLISECONDS_IN_A_DAY / 86_400));
  return whole.toISOString().slice(0, 19).replace("T", " ");
}
