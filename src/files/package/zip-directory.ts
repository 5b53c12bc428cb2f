import { Problem } from "../../measure/problem";

/** A part of a package as its directory tells of it. */
export interface PackedPart {
  readonly name: string;
  /** 0 is stored as it is, 8 is deflated; nothing else is used in workbooks. */
  readonly method: number;
  readonly checksum: number;
  readonly packedSize: number;
  /** Bytes when unpacked, as claimed. */
  readonly size: number;
  readonly flags: number;
  /** Time and date as the package writes them. */
  readonly stamp: number;
  /** Where the part's own header begins. */
  readonly offset: number;
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const ENTRY_LENGTH = 46;
const LOCAL_LENGTH = 30;
const LONGEST_COMMENT = 0xffff;
/** A size that stands in the extra field instead, for packages of more than 4 GB. */
const ELSEWHERE = 0xffffffff;
const LARGE_SIZES = 0x0001;

/**
 * Reads the directory of a package, without unpacking anything.
 *
 * @param bytes A whole zip file.
 * @throws Problem `file-damaged` where the end is missing or the directory leads nowhere.
 */
export function partsOfPackage(bytes: Uint8Array): PackedPart[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const end = endOfDirectory(view);
    const count = view.getUint16(end + 10, true);
    const parts: PackedPart[] = [];
    let at = view.getUint32(end + 16, true);
    for (let i = 0; i < count; i++) {
      if (view.getUint32(at, true) !== ENTRY) throw new RangeError("no entry");
      const nameLength = view.getUint16(at + 28, true);
      const extraLength = view.getUint16(at + 30, true);
      const name = bytes.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + nameLength);
      const written = {
        size: view.getUint32(at + 24, true),
        packedSize: view.getUint32(at + 20, true),
        offset: view.getUint32(at + 42, true),
      };
      parts.push({
        name: new TextDecoder().decode(name).replace(/^\//, "").replaceAll("\\", "/"),
        flags: view.getUint16(at + 8, true),
        method: view.getUint16(at + 10, true),
        stamp: view.getUint32(at + 12, true),
        checksum: view.getUint32(at + 16, true),
        ...largeSizes(view, at + ENTRY_LENGTH + nameLength, extraLength, written),
      });
      at += ENTRY_LENGTH + nameLength + extraLength + view.getUint16(at + 32, true);
    }
    return parts;
  } catch {
    throw new Problem("file-damaged");
  }
}

/** The bytes of a part as they are packed. @throws Problem `file-damaged`. */
export function packedBytes(bytes: Uint8Array, part: PackedPart): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { offset, packedSize } = part;
  if (offset + LOCAL_LENGTH > bytes.length || view.getUint32(offset, true) !== LOCAL)
    throw new Problem("file-damaged");
  const start =
    offset + LOCAL_LENGTH + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packedSize > bytes.length) throw new Problem("file-damaged");
  return bytes.subarray(start, start + packedSize);
}

function endOfDirectory(view: DataView): number {
  const last = view.byteLength - END_LENGTH;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--)
    if (view.getUint32(at, true) === END) return at;
  throw new RangeError("no end");
}

/** Sizes that some programs write into an extra field, also of small packages. */
function largeSizes<Sizes extends { size: number; packedSize: number; offset: number }>(
  view: DataView,
  start: number,
  length: number,
  written: Sizes,
): Sizes {
  const sizes = { ...written };
  for (let at = start; at + 4 <= start + length; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== LARGE_SIZES) continue;
    let from = at + 4;
    for (const which of ["size", "packedSize", "offset"] as const) {
      if (written[which] !== ELSEWHERE) continue;
      sizes[which] = Number(view.getBigUint64(from, true));
      from += 8;
    }
  }
  return sizes;
}
