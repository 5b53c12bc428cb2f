import type { Words } from "../sentence";

/** Sentences about a field sheet as a whole. */
export const fieldsheetMessages = {
  "or-else": ({ sentence }: Words<"sentence">) => `Or: ${sentence}`,
  "nothing-found": ({ rows }: Words<"rows">) => `Nothing was found. Rows checked: ${rows}.`,
  "not-looked-at": ({ what }: Words<"what">) =>
    `Not looked at, because the sheet does not record it: ${what}.`,
  "looked-second-reading": "a second reading",
  "looked-alcohol": "alcohol",
  "looked-foam": "foam",
  "looked-settle": "time to settle",
  "looked-packed": "undisturbed packed concrete",
  "looked-leak": "leaks",
  "looked-limits": "limits (so nothing was compared with a specification)",
  "looked-limits-unread":
    "limits (a column that may give them was not read, so nothing was compared with a specification)",
  "column-named": ({ column }: Words<"column">) => `column ${column}`,
  "column-headed": ({ column, header }: Words<"column" | "header">) =>
    `column ${column}, “${header}”`,
  "column-may-decide": ({ mayBe }: Words<"mayBe">) =>
    `it may hold ${mayBe} and was not read, so tests that it touches are incomplete. Say what it is: give it a plain header, or name it in the setup.`,
  "column-may-be": ({ mayBe }: Words<"mayBe">) =>
    `it may hold ${mayBe} and was not read. Say what it is: give it a plain header, or name it in the setup.`,
  "column-apart": "it stands behind a blank column, and was not read with the table.",
  "columns-apart": ({ last }: Words<"last">) =>
    `it and what follows up to “${last}” stand behind a blank column, and were not read with the table.`,
  "readings-apart": ({ last }: Words<"last">) =>
    `it and what follows up to “${last}” stand behind a blank column and hold readings of their own, so they were not read with this table. Check them by themselves.`,
  "column-not-read": "it was not read, because nothing says what it holds.",
  "rows-headed-otherwise": ({ header }: Words<"header">) =>
    `A row further down, which begins with “${header}”, heads the columns otherwise than the header above. It and the rows below it were not read: check them by themselves.`,
  "amount-told": ({ title }: Words<"title">) =>
    `“${title}” tells of an amount that changes the air, and no column holds it, so the tests that it touches are incomplete. Write what went into each test into a column of its own, 0 where it was none.`,
  "words-may-void": ({ title }: Words<"title">) =>
    `“${title}” stands in a row of its own and tells of something that may void a test, so the tests that it may be of are incomplete. Write it beside the test that it is of.`,
  "row-of-words": ({ title }: Words<"title">) =>
    `The row holds “${title}” and nothing else. It was taken for a remark, not for a test, and nothing was read from it.`,
  "title-of-another-method": ({ title }: Words<"title">) =>
    `The title “${title}” speaks of another method, so it is open whether these readings are of a volumetric meter, and the tests are incomplete. Where they are, add a column Method, or leave the title out of what is checked.`,
  "said-once": ({ labels }: Words<"labels">) =>
    `What stands once, beside ${labels}, was taken for every test in the table.`,
  "once-not-read": ({ label }: Words<"label">) =>
    `What stands once, beside “${label}”, was not read, because it cannot be told what is meant. Nothing was compared with it: name it so that it can be read one way only, such as “Specified air”, 6 ± 1 %, or write it into a column of the table.`,
  "once-may-decide": ({ label }: Words<"label">) =>
    `“${label}” stands once for the table and changes the air of the tests, but it cannot be told how much it is or whose, so they are incomplete. Write it into a column of the table.`,
  "may-be-by-pressure":
    "the sheet corrects its readings for the aggregate and records neither alcohol nor cups, as tests by the pressure meter do. Whether they are of a volumetric meter is open, so they are incomplete: add a column Method.",
  "rows-may-be-readings":
    "it may count the readings of a test, or the tests of a sample, so the tests are incomplete. Head it Roll where each row is a reading; where each is a test, call it “not ours” in the setup.",
  "rows-of-readings":
    "it counts the readings of a test, and a further reading has no name, or a name has a reading twice or lacks one, so it is open which rows are one test; they are incomplete. Give each test a name of its own, or put its readings into one row.",
  "readings-in-rows":
    "it counts the readings of a test, so the rows of a test are read as one, in the row of its first reading. Where every row is a test of its own, call the column “not ours” in the setup.",
  "rows-are-no-tests": ({ most }: Words<"most">) =>
    `The table holds several tests in a row, or a row for each value of a test. Such tables are read up to ${most} rows, and not as a stream: check it in parts, each with its headers.`,
  "no-tests-below":
    "There are no tests below the headers. Select the headers together with the rows below them.",
  "no-header-row":
    "No header row was found. Select the table with its headers, such as Sample, First reading, Second reading, Alcohol (oz).",
  "no-readings-column":
    'No column of meter readings was recognised. Head one "First reading", "Second reading" or "Final reading".',
  "headers-and-rows-differ": ({ headers, columns }: Words<"headers" | "columns">) =>
    `The headers are ${headers} cells wide and the rows ${columns}. Give both over the same columns.`,
  "limits-do-not-fit": ({ given, rows }: Words<"given" | "rows">) =>
    `the limits given (${given}) are not as many as the rows (${rows}). Give one number, or one for each row.`,
  "limits-crossed": ({ low, high }: Words<"low" | "high">) =>
    `The low limit, ${low} %, lies above the high limit, ${high} %. Look at both.`,
} as const;
