import { unzipSync, zipSync } from "fflate";
import type { Random } from "../simulation/random";

const latin1 = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");
const bytesOf = (text: string) => new Uint8Array(Buffer.from(text, "latin1"));

/** What may stand in a part of a package where nobody expects it. */
const CLAIMS = ["-1", "0", "99999999", "1e309", "A1:XFD1048576", "ZZZZ9", "", "&bad;", "<c", "𐀀"];

/** Ways in which a text of a package goes wrong. */
const TEXT_FAULTS: readonly ((text: string, random: Random) => string)[] = [
  (text, random) => text.slice(0, random.whole(0, text.length)),
  (text, random) => without(text, /<[a-zA-Z:]+(?:\s[^<>]*)?\/?>/g, random),
  (text, random) => without(text, /\s[a-zA-Z:]+="[^"]*"/g, random),
  (text, random) => replaced(text, /(?<==")[^"]*(?=")/g, random.one(CLAIMS), random),
  (text, random) => replaced(text, /(?<=>)[^<]+(?=<)/g, random.one(CLAIMS), random),
  (text, random) => {
    const at = random.whole(0, text.length);
    return text.slice(0, at) + text.slice(at - random.whole(0, Math.min(at, 300)));
  },
];

function replaced(text: string, what: RegExp, by: string, random: Random): string {
  const found = [...text.matchAll(what)];
  if (found.length === 0) return text;
  const { index, 0: old } = random.one(found);
  return text.slice(0, index) + by + text.slice(index + old.length);
}

function without(text: string, what: RegExp, random: Random): string {
  return replaced(text, what, "", random);
}

/** Bytes turned over anywhere, as a bad line or a bad disk does. */
export function flipped(bytes: Uint8Array, random: Random): Uint8Array {
  const copy = Uint8Array.from(bytes);
  for (let i = random.whole(1, 12); i > 0; i--) {
    copy[random.whole(0, copy.length - 1)]! ^= 1 << random.whole(0, 7);
  }
  return random.chance(0.2) ? copy.subarray(0, random.whole(0, copy.length)) : copy;
}

/** A package that is whole as an archive, with a part removed, or its text broken. */
export function brokenInside(bytes: Uint8Array, random: Random): Uint8Array {
  const parts = unzipSync(bytes);
  for (let i = random.whole(1, 3); i > 0; i--) {
    const name = random.one(Object.keys(parts));
    if (random.chance(0.15)) delete parts[name];
    else parts[name] = bytesOf(random.one(TEXT_FAULTS)(latin1(parts[name]!), random));
    if (Object.keys(parts).length === 0) break;
  }
  return zipSync(parts);
}
