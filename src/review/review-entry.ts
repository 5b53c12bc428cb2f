/** The sheet on which a review is kept. */
export const REVIEW_SHEET = "Fresh review";

/** What can be written of a finding; "renamed" says that a sheet was called something else before. */
export const DECISIONS = ["accepted", "corrected", "open", "renamed"] as const;
export type Decision = (typeof DECISIONS)[number];

/** What a decision is about, as it stood; each as a reader of the sheet sees it. */
export interface Subject {
  readonly sheet: string;
  /** The test's own id; "" for one without, and for the sheet as a whole. */
  readonly sample: string;
  /** The cell, such as "F12". */
  readonly place: string;
  readonly rule: string;
  /** The header of the cell's column; "" where the finding is about a test as a whole. */
  readonly column: string;
  /** What stood in the cell. */
  readonly value: string;
  /** The numbers that the finding was said with, by name. */
  readonly figures: string;
}

/** One line of a review. */
export interface ReviewEntry extends Subject {
  /** Its line on the sheet, from 1. */
  readonly line: number;
  /** "2026-05-31 14:05:09", as the clock stood where it was written. */
  readonly time: string;
  /** The finding in words, as it was said. */
  readonly finding: string;
  readonly decision: Decision;
  readonly reason: string;
  readonly oldValue: string;
  readonly newValue: string;
  readonly initials: string;
}

/** The headings of the table, in the order in which a new one has them. */
export const HEADINGS = {
  time: "time",
  sheet: "sheet",
  sample: "sample",
  place: "place",
  rule: "rule",
  column: "column",
  value: "value",
  figures: "figures",
  finding: "finding",
  decision: "decision",
  reason: "reason",
  oldValue: "old value",
  newValue: "new value",
  initials: "initials",
} as const satisfies Record<keyof Omit<ReviewEntry, "line">, string>;

export type Heading = keyof typeof HEADINGS;
export const HEADING_IDS = Object.keys(HEADINGS) as Heading[];
