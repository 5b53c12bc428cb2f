/** What a file holds that is no spreadsheet, in a sentence. */
export const fileKindMessages = {
  "holds-pdf": "a PDF document",
  "holds-picture": "a picture or other media",
  "holds-archive": "an archive of files",
  "holds-program": "a program",
  "holds-database": "a database",
  "holds-document": "a document or a presentation",
  "holds-markup": "a web page or other marked-up text",
  "holds-text": "plain text",
  "holds-binary": "binary data",
} as const;
