/**
 * What we ask of Excel, by the requirement set that brings it. Office 2021 ends at 1.14, Office 2024
 * at 1.17; whatever lies above is asked for before it is used.
 */
const BROUGHT_BY = {
  /** Everything without which we cannot read and mark: conditional formats on several areas, events. */
  readingAndMarking: "1.9",
  /** An event when rows or columns are sorted. */
  sortEvents: "1.10",
  /** Threaded comments; a cell that has one takes no note. */
  comments: "1.10",
  /** How decimals are written. */
  decimalSeparator: "1.11",
  /** Which cells are merged. */
  mergedAreas: "1.13",
  /** Events that say whether we caused them ourselves. */
  eventCause: "1.14",
  /** Notes. */
  notes: "1.18",
  /** One step of Undo for everything that one command does. */
  undoGroups: "1.20",
} as const;

/** Whether this Excel can do something. */
export function excelCan(ability: keyof typeof BROUGHT_BY): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", BROUGHT_BY[ability]);
}
