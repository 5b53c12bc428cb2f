import { checksumOf } from "./checksum";
import { packedBytes, partsOfPackage, type PackedPart } from "./zip-directory";

const UTF8_NAME = 0x0800;
/** Sizes follow behind the part instead of standing before it; never so in what is written here. */
const SIZES_BEHIND = 0x0008;
/** The first day that a package can write, so that the same content is the same file. */
const FIRST_DAY = 0x00210000;

interface WrittenPart extends Omit<PackedPart, "offset"> {
  readonly packed: Uint8Array;
}

/**
 * A package with some parts changed or added. Every other part is taken over as it is packed, byte for
 * byte and in its place; new parts come last.
 *
 * @param original The package, or undefined for a new one.
 * @param changed New content by part name; null takes a part out.
 */
export async function packageWith(
  original: Uint8Array | undefined,
  changed: ReadonlyMap<string, Uint8Array | null>,
): Promise<Uint8Array> {
  const there = original ? partsOfPackage(original) : [];
  const kept = await Promise.all(
    there
      .filter(({ name }) => changed.get(name) !== null)
      .map((part) => {
        const content = changed.get(part.name);
        return content
          ? packedPart(part.name, content, part.stamp)
          : { ...part, packed: packedBytes(original!, part) };
      }),
  );
  const names = new Set(there.map(({ name }) => name));
  const added = await Promise.all(
    [...changed].flatMap(([name, content]) =>
      content && !names.has(name) ? [packedPart(name, content, FIRST_DAY)] : [],
    ),
  );
  return joined([...kept, ...added]);
}

/** A package whose parts are not compressed, quick to make and to read again. */
export function storedPackage(parts: ReadonlyMap<string, Uint8Array>): Uint8Array {
  return joined(
    [...parts].map(([name, content]) => ({ ...described(name, content, FIRST_DAY), method: 0 })),
  );
}

function described(name: string, content: Uint8Array, stamp: number): WrittenPart {
  return {
    name,
    flags: UTF8_NAME,
    method: 8,
    stamp,
    checksum: checksumOf(content),
    size: content.length,
    packedSize: content.length,
    packed: content,
  };
}

async function packedPart(name: string, content: Uint8Array, stamp: number): Promise<WrittenPart> {
  const stream = new Blob([content as Uint8Array<ArrayBuffer>])
    .stream()
    .pipeThrough(new CompressionStream("deflate-raw"));
  const packed = new Uint8Array(await new Response(stream).arrayBuffer());
  return { ...described(name, content, stamp), packed, packedSize: packed.length };
}

function joined(parts: readonly WrittenPart[]): Uint8Array {
  const names = parts.map(({ name }) => new TextEncoder().encode(name));
  const length = parts.reduce(
    (sum, { packed }, i) => sum + 30 + 46 + 2 * names[i]!.length + packed.length,
    22,
  );
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  const offsets: number[] = [];
  let at = 0;
  const write = (...fields: readonly (readonly [size: 2 | 4, value: number])[]) => {
    for (const [size, value] of fields) {
      if (size === 2) view.setUint16(at, value, true);
      else view.setUint32(at, value, true);
      at += size;
    }
  };
  const put = (content: Uint8Array) => {
    bytes.set(content, at);
    at += content.length;
  };
  const common = (part: WrittenPart, name: Uint8Array) => {
    write([2, 20], [2, part.flags & ~SIZES_BEHIND], [2, part.method], [4, part.stamp]);
    write([4, part.checksum], [4, part.packedSize], [4, part.size], [2, name.length], [2, 0]);
  };
  parts.forEach((part, i) => {
    offsets.push(at);
    write([4, 0x04034b50]);
    common(part, names[i]!);
    put(names[i]!);
    put(part.packed);
  });
  const directory = at;
  parts.forEach((part, i) => {
    write([4, 0x02014b50], [2, 20]);
    common(part, names[i]!);
    write([2, 0], [2, 0], [2, 0], [4, 0], [4, offsets[i]!]);
    put(names[i]!);
  });
  const size = at - directory;
  write([4, 0x06054b50], [2, 0], [2, 0], [2, parts.length], [2, parts.length]);
  write([4, size], [4, directory], [2, 0]);
  return bytes;
}
