import type { Words } from "../sentence";

/** Sentences about the spreadsheet program and what stands in its way. */
export const hostMessages = {
  "selection-empty":
    "The selection holds nothing. Select a cell of the table, or the table with its headers, then try again.",
  "selection-in-parts":
    "The selection is in several parts or is not made of cells. Select one block of cells, then try again.",
  "selection-too-large": ({ rows, columns, limit }: Words<"rows" | "columns" | "limit">) =>
    `${rows} rows by ${columns} columns are more than can be read at once. Select at most ${limit} cells.`,
  "host-busy": "A cell is being edited. Press Enter or Esc in the sheet, then try again.",
  "dialog-open": "A dialog is open in Excel. Close it, then try again.",
  "host-overloaded": "Excel is busy or short of memory. Wait a moment, then try again.",
  "too-much-at-once":
    "This is more than Excel takes at once. Select fewer rows or columns, then try again.",
  "sheet-protected":
    "The sheet or the workbook is protected or open for reading only. Take the protection off under Review, then try again.",
  "marks-not-on-protected-sheet": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” is protected, so it was not marked. Take the protection off under Review, then mark again.`,
  "marks-left-on-protected-sheet": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” is protected, so our marks stay on it. Take the protection off under Review, then remove the marks again.`,
  "notes-left-on-protected-sheet": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” is protected against changes of notes, so our notes stay on it. Take the protection off under Review, then remove the marks.`,
  "notes-changed-left": ({ places }: Words<"places">) =>
    `Notes of ours that were changed since are yours now and stay as they are: ${places}. Delete them in the sheet if you do not want them.`,
  "notes-not-seen-here":
    "This Excel does not let us see notes. Notes that we have put in a newer Excel are still there; remove the marks there.",
  "places-and-more": ({ named, more }: Words<"named" | "more">) => `${named} and ${more} more`,
  "marks-hidden": ({ count }: Words<"count">) =>
    `Marked cells in rows or columns that are hidden or filtered out: ${count}. Show all rows and columns to see them.`,
  "marks-perhaps-hidden":
    "Some rows or columns of the table are hidden or filtered out, and there may be marks in them. Show all rows and columns to see them.",
  "table-changed":
    "The table was changed while it was being marked, so nothing is marked. Wait until nobody edits it, then mark again.",
  "sheet-gone":
    "A sheet or cells that were there before are not there now. Read the table again, then try again.",
  "sheet-not-of-cells":
    "This sheet holds a chart or a macro, not cells. Go to the sheet with the table, then try again.",
  "cells-in-the-way":
    "Merged cells, a filter or a pivot table stand in the way. Clear them or choose other cells, then try again.",
  "changed-meanwhile":
    "The workbook was changed by somebody or something else at the same time. Try again.",
  "workbook-not-in-front":
    "Another workbook is in front. Click into this workbook, then try again.",
  "not-signed-in":
    "Excel asks for a sign-in or a password first. Give it in Excel, then try again.",
  "links-blocked":
    "Excel holds back the links of this workbook to other files. Allow them in Excel, then try again.",
  "excel-cannot":
    "This Excel cannot do that. The functions and the list of findings work without it; a newer Excel can do it.",
  "excel-too-old":
    "This Excel is too old to be read and marked. The worksheet functions work in it; for the rest use Excel 2021 or later, or Excel on the web.",
  "notes-need-newer-excel":
    "No notes were added, because this Excel cannot add them. The colours and the list of findings say the same.",
  "notes-kept": ({ count }: Words<"count">) =>
    `Cells that have a note or a comment of your own got none from us: ${count}. Our sentences are in the list of findings.`,
  "notes-only-first": ({ count }: Words<"count">) =>
    `Notes were added to the first ${count} cells only, so that the sheet stays quick. All sentences are in the list of findings.`,
  "notes-not-on-protected-sheet": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” is protected against notes, so none were added there. All sentences are in the list of findings.`,
  "results-too-long": ({ rows }: Words<"rows">) =>
    `${rows} lines are more than a sheet can hold. Check fewer rows, then write the results sheet again.`,
  "host-failed":
    "Excel did not do this and gave no reason that helps. Try again; if it stays so, save the workbook, close it and open it again.",
} as const;
