import type { Words } from "../sentence";

/** Sentences about files: what cannot be read, what was left out, what is not shown. */
export const fileMessages = {
  "file-not-read": ({ name }: Words<"name">) =>
    `“${name}” cannot be read. Choose a workbook saved as .xlsx, or a .csv file with one row a line.`,
  "file-empty": ({ name }: Words<"name">) => `“${name}” holds no cells. Choose another file.`,
  "file-damaged": ({ name }: Words<"name">) =>
    `“${name}” is damaged or not complete. Open it where it was made and save it again as .xlsx.`,
  "file-encrypted": ({ name }: Words<"name">) =>
    `“${name}” is protected with a password. Open it where it was made, take the password off and save a copy.`,
  "file-old-workbook": ({ name }: Words<"name">) =>
    `“${name}” is a workbook of the older .xls kind. Open it in a spreadsheet and save it as .xlsx.`,
  "file-binary-workbook": ({ name }: Words<"name">) =>
    `“${name}” is a workbook of the binary .xlsb kind. Open it in a spreadsheet and save it as .xlsx.`,
  "file-opendocument": ({ name }: Words<"name">) =>
    `“${name}” is an OpenDocument file (.ods). Open it in a spreadsheet and save it as .xlsx.`,
  "file-of-another-kind": ({ name, kind }: Words<"name" | "kind">) =>
    `“${name}” is no spreadsheet whatever its name says: it holds ${kind}. Choose a workbook saved as .xlsx, or a .csv file.`,
  "file-unpacks-too-large": ({ name, size, most }: Words<"name" | "size" | "most">) =>
    `“${name}” unpacks to ${size} MB, more than the ${most} MB that are read. Delete sheets and pictures that are not needed and save it again.`,
  "file-claims-too-much": ({ name, range, sheet }: Words<"name" | "range" | "sheet">) =>
    `“${name}” claims cells that are not there: ${range} on sheet “${sheet}”. Delete the empty rows and columns after the last test, save it and open it again.`,
  "file-too-large": ({ name, most }: Words<"name" | "most">) =>
    `“${name}” holds more than the ${most} rows that are taken. Use the add-in in Excel, or the command line for a CSV file.`,
  "file-too-many-cells": ({ name, cells, most }: Words<"name" | "cells" | "most">) =>
    `“${name}” holds ${cells} cells, more than the ${most} that are taken. Save the sheet of tests as a workbook of its own.`,
  "file-line-too-long": ({ name, length, line }: Words<"name" | "length" | "line">) =>
    `“${name}” has ${length} characters in line ${line} without an end. Save it again as CSV with one row a line.`,
  "quote-not-closed": ({ name, line }: Words<"name" | "line">) =>
    `“${name}” opens a quote in line ${line} and never closes it, so all below became one cell. Close it and open the file again.`,
  "nul-bytes-left-out": ({ name, count }: Words<"name" | "count">) =>
    `“${name}” held ${count} NUL characters, which are no text and were left out.`,
  "file-shows-not-all": ({ name, what }: Words<"name" | "what">) =>
    `“${name}” also holds what the workbench does not show, and keeps when it saves: ${what}.`,
  "file-formulas-not-computed": ({ name, count }: Words<"name" | "count">) =>
    `“${name}” has ${count} formulas on the columns of a table. They show the value that they last had, and are kept when it is saved.`,
  "file-opening": ({ name, size }: Words<"name" | "size">) => `Opening “${name}” (${size} MB) …`,
  "file-opened": ({ name }: Words<"name">) => `“${name}” is open. It stays in this browser.`,
  "file-saving": "Saving …",
  "file-saved": ({ name, sheets, cells, notes }: Words<"name" | "sheets" | "cells" | "notes">) =>
    `Saved as “${name}” in the folder for downloads: the file as it was opened, with our marks as they are now. Changed notes: ${notes}; changed cells: ${cells}; new sheets: ${sheets}. Formats, widths and rules that were set here are not in it.`,
  "moved-cells-not-saved": ({ sheet }: Words<"sheet">) =>
    `Rows or columns of “${sheet}” were put in, taken out or moved here, and a file cannot be saved with that. Undo it (Ctrl+Z), or do it in the program that made the file.`,
  "new-name-not-saved": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” keeps its name in the file.`,
  "deleted-sheet-kept": ({ sheet }: Words<"sheet">) =>
    `Sheet “${sheet}” was deleted here and is still in the file.`,
  "cell-not-saved": ({ sheet, cell }: Words<"sheet" | "cell">) =>
    `Cell ${cell} of “${sheet}” holds a formula that fills other cells too, so it was left as it is in the file.`,
} as const;
