import type { Words } from "../sentence";

/** What is said of a review: decisions about findings, and the sheet on which they are kept. */
export const paneReviewMessages = {
  "review-title": "Review",
  "review-filter": "Show findings by decision",
  "word-open": "open",
  "word-accepted": "accepted",
  "word-corrected": "corrected",
  "review-choose": "Choose a finding in the list to decide it.",
  "review-of": ({ place, sentence }: Words<"place" | "sentence">) => `${place}: ${sentence}`,
  "review-for": "Decide",
  "review-for-one": "this finding",
  "review-for-all": ({ count, rule }: Words<"count" | "rule">) =>
    `all ${count} open ones listed of “${rule}”`,
  "review-reason": "Reason",
  "review-initials": "Your initials",
  "review-accept": "Accept",
  "review-leave-open": "Leave open",
  "review-where-kept": ({ sheet }: Words<"sheet">) =>
    `A decision is a line on the sheet “${sheet}”, which is made with the first one. Lines are added, never changed.`,
  "review-initials-missing":
    "Type your initials first: a decision says whose it is. Nothing was recorded.",
  "review-reason-missing":
    "Type a reason first: a finding is accepted for one. Nothing was recorded.",
  "review-recorded": ({ count, sheet }: Words<"count" | "sheet">) =>
    `Recorded on “${sheet}”: ${count}.`,
  "review-recorded-before": ({ sheet }: Words<"sheet">) =>
    `“${sheet}” says so already; nothing was added.`,
  "review-finding-gone":
    "The sheet was changed meanwhile and this finding is not there any more. Nothing was recorded.",
  "review-by": ({ decision, time, initials }: Words<"decision" | "time" | "initials">) =>
    `${decision}, ${initials}, ${time}`,
  "review-by-with-reason": ({ by, reason }: Words<"by" | "reason">) => `${by}: ${reason}`,
  "review-reopened": ({ time, initials, value }: Words<"time" | "initials" | "value">) =>
    `open again: ${initials} accepted it on ${time} as it stood then (${value})`,
  "review-value-blank": "blank",
  "review-stands-again": ({ time, initials }: Words<"time" | "initials">) =>
    `open again: it was noted as corrected by ${initials} on ${time}, and stands as before`,
  "review-corrections": ({ count }: Words<"count">) => `Corrected since? ${count}`,
  "review-corrections-hint":
    "These findings are gone because cells were changed. Record it as a correction, or not.",
  "review-correction": ({ sample, rule, from, to }: Words<"sample" | "rule" | "from" | "to">) =>
    `${sample}, ${rule}: it was ${from}, it is ${to}`,
  "review-record": "Record as corrected",
  "review-record-all": ({ count }: Words<"count">) => `Record all ${count}`,
  "review-no-correction": "No correction",
  "review-corrected-before": ({ count }: Words<"count">) => `Corrected: ${count}`,
  "review-corrected-line": ({ correction, by }: Words<"correction" | "by">) =>
    `${correction} (${by})`,
  "review-all-filtered": "No finding of the weights and decisions chosen above.",
  "review-gone": ({ sheet }: Words<"sheet">) =>
    `The sheet “${sheet}” is not there any more: it was deleted or renamed. Its decisions are not seen; the next one begins a new sheet.`,
  "review-sheet-not-ours": ({ sheet, missing }: Words<"sheet" | "missing">) =>
    `The sheet “${sheet}” holds something else, or its headings were changed (not found: ${missing}). Nothing is read from it or written to it. Give it another name, or put the headings right.`,
  "review-decision-unknown": ({ sheet, line, decision }: Words<"sheet" | "line" | "decision">) =>
    `“${sheet}”, line ${line}: “${decision}” is no decision that is known here, so the line was not taken. Write accepted, corrected or open.`,
  "review-time-unreadable": ({ sheet, line, time }: Words<"sheet" | "line" | "time">) =>
    `“${sheet}”, line ${line}: the time “${time}” cannot be read, so the line was not taken. Write it as 2026-05-31 14:05.`,
  "review-line-incomplete": ({
    sheet,
    line,
    decision,
    missing,
  }: Words<"sheet" | "line" | "decision" | "missing">) =>
    `“${sheet}”, line ${line}: ${decision} without ${missing}, so the line was not taken. Fill it in.`,
  "review-lines-not-taken": ({ count }: Words<"count">) =>
    `Lines of the review that were not taken: ${count}`,
  "review-other-sheet": ({ name, count }: Words<"name" | "count">) =>
    `Decisions about a sheet “${name}”, which is not in this workbook: ${count}. If this sheet was called that before, say so.`,
  "review-was-called": ({ name }: Words<"name">) => `This sheet was “${name}”`,
  "review-renamed": ({ name, sheet }: Words<"name" | "sheet">) =>
    `Recorded: “${sheet}” was called “${name}” before.`,
  "review-report": ({ counts }: Words<"counts">) => `Review: ${counts}.`,
} as const;
