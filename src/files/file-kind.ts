import { Problem } from "../measure/problem";
import type { fileKindMessages } from "../messages/english/file-kinds";
import { phrase } from "../messages/pane-catalogue";
import { partsOfPackage } from "./package/zip-directory";

/** What a file holds that nobody reads here. */
export type Kind = keyof typeof fileKindMessages extends `holds-${infer K}` ? K : never;

/** What the first bytes of a file say. Of kinds that nobody reads here, the words for a sentence. */
const BEGINNINGS: readonly (readonly [bytes: string, kind: Kind])[] = [
  ["%PDF", "pdf"],
  ["\x89PNG", "picture"],
  ["\xff\xd8\xff", "picture"],
  ["GIF8", "picture"],
  ["BM", "picture"],
  ["RIFF", "picture"],
  ["\x1f\x8b", "archive"],
  ["7z\xbc\xaf", "archive"],
  ["Rar!", "archive"],
  ["MZ", "program"],
  ["\x7fELF", "program"],
  ["SQLite format", "database"],
];
const PACKAGE = "PK\x03\x04";
const COMPOUND = "\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1";
/** So far the first directory of a compound file is looked into for the name of what it holds. */
const COMPOUND_DIRECTORY = 1 << 20;
const WEB_PAGE = /^\s*(?:<!doctype html|<html|<table|<\?xml|<worksheet|<workbook)/i;
/** Text has next to no control characters. */
const LOOKED_AT = 4096;
const MOST_CONTROL_CHARACTERS = 0.05;

/**
 * Whether a file is a workbook package or text, by what it holds and not by its name.
 *
 * @throws Problem for everything else, with what it is: `file-encrypted`, `file-old-workbook`,
 *   `file-binary-workbook`, `file-opendocument`, `file-of-another-kind`, `file-damaged`.
 */
export function kindOfFile(bytes: Uint8Array): "workbook" | "text" {
  const start = latin(bytes.subarray(0, 512));
  if (start.startsWith(PACKAGE)) return kindOfPackage(bytes);
  if (start.startsWith(COMPOUND)) throw problemOfCompound(bytes);
  const known = BEGINNINGS.find(([beginning]) => start.startsWith(beginning));
  if (known && (known[0].length > 2 || isBinary(bytes))) throw anotherKind(known[1]);
  if (WEB_PAGE.test(start.replace(/^\xef\xbb\xbf/, ""))) throw anotherKind("markup");
  if (isBinary(bytes)) throw anotherKind("binary");
  return "text";
}

function kindOfPackage(bytes: Uint8Array): "workbook" {
  const names = new Set(partsOfPackage(bytes).map(({ name }) => name));
  const has = (beginning: string) => [...names].some((name) => name.startsWith(beginning));
  if (names.has("xl/workbook.bin")) throw new Problem("file-binary-workbook");
  if (names.has("[Content_Types].xml") && !has("word/") && !has("ppt/")) return "workbook";
  if (names.has("content.xml") && names.has("mimetype")) throw new Problem("file-opendocument");
  throw anotherKind(has("word/") || has("ppt/") ? "document" : "archive");
}

/** An old workbook, or a new one that is encrypted: both come in the older container. */
function problemOfCompound(bytes: Uint8Array): Problem {
  const directory = latin(bytes.subarray(0, COMPOUND_DIRECTORY)) + latin(bytes.subarray(-65536));
  const holds = (name: string) => directory.includes([...name].join("\0"));
  if (holds("EncryptedPackage")) return new Problem("file-encrypted");
  if (holds("Workbook") || holds("Book")) return new Problem("file-old-workbook");
  return anotherKind("document");
}

function anotherKind(kind: Kind): Problem {
  return new Problem("file-of-another-kind", { kind: phrase(`holds-${kind}`) });
}

/** Text in UTF-16 is half zeros, and some instruments leave a zero here and there. */
function isBinary(bytes: Uint8Array): boolean {
  const looked = bytes.subarray(0, LOOKED_AT);
  const control = looked.filter((byte) => byte < 32 && byte !== 0 && !(byte >= 9 && byte <= 13));
  return control.length > looked.length * MOST_CONTROL_CHARACTERS;
}

function latin(bytes: Uint8Array): string {
  return new TextDecoder("windows-1252").decode(bytes);
}
