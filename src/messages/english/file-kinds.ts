/** What a file holds that is no spreadsheet, as the words in a sentence. */
export const fileKindWords = {
  pdf: "a PDF document",
  picture: "a picture or other media",
  archive: "an archive of files",
  program: "a program",
  database: "a database",
  document: "a document or a presentation",
  markup: "a web page or other marked-up text",
  text: "plain text",
  binary: "binary data",
} as const;
