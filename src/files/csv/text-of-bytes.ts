/** How the text of a file is written, as `TextDecoder` calls it. */
export type Encoding = "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";

const LOOKED_AT = 4096;
const PIECE = 1 << 20;
/** Text in UTF-16 has a zero in every other byte as long as it is mostly Latin. */
const MOSTLY = 0.6;

/**
 * How the text of a file is written: by its byte order mark, else by its zeros, else UTF-8 where it
 * can be. Older programs on Windows write their Western code page instead.
 *
 * @param bytes The whole file, or its beginning where the rest is still to come.
 * @param whole Whether these are all bytes; a beginning may end within a character.
 */
export function encodingOf(bytes: Uint8Array, whole = true): Encoding {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return "utf-16le";
  if (first === 0xfe && second === 0xff) return "utf-16be";
  const looked = bytes.subarray(0, LOOKED_AT);
  const zeros = (odd: number) => looked.filter((byte, i) => byte === 0 && i % 2 === odd).length;
  const enough = (looked.length / 2) * MOSTLY;
  if (looked.length > 3 && zeros(1) > enough && zeros(0) === 0) return "utf-16le";
  if (looked.length > 3 && zeros(0) > enough && zeros(1) === 0) return "utf-16be";
  return isUtf8(bytes, whole) ? "utf-8" : "windows-1252";
}

function isUtf8(bytes: Uint8Array, whole: boolean): boolean {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  try {
    for (let from = 0; from < bytes.length; from += PIECE)
      decoder.decode(bytes.subarray(from, from + PIECE), { stream: true });
    if (whole) decoder.decode();
    return true;
  } catch {
    return false;
  }
}
