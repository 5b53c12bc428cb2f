import { Problem } from "../../measure/problem";
import { checksumOf } from "./checksum";
import { packedBytes, type PackedPart } from "./zip-directory";

/**
 * Unpacks a part of a package. It ends as soon as more comes out than the directory claims, so what
 * was allowed by its claim stays within it.
 *
 * @throws Problem `file-damaged` where the part is not what its size and checksum say.
 */
export async function unpackPart(bytes: Uint8Array, part: PackedPart): Promise<Uint8Array> {
  const packed = packedBytes(bytes, part);
  const unpacked = part.method === 0 ? packed : await inflated(packed, part);
  if (unpacked.length !== part.size || checksumOf(unpacked) !== part.checksum)
    throw new Problem("file-damaged", { part: part.name });
  return unpacked;
}

async function inflated(packed: Uint8Array, { name, method, size }: PackedPart) {
  const damaged = () => new Problem("file-damaged", { part: name });
  if (method !== 8) throw damaged();
  const unpacked = new Uint8Array(size);
  let length = 0;
  const reader = new Blob([packed as Uint8Array<ArrayBuffer>])
    .stream()
    .pipeThrough(new DecompressionStream("deflate-raw"))
    .getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      if (length + value.length > size) throw damaged();
      unpacked.set(value, length);
      length += value.length;
    }
  } catch {
    await reader.cancel().catch(() => undefined);
    throw damaged();
  }
  return unpacked.subarray(0, length);
}
