import { Problem } from "../../measure/problem";
import { relationsIn, relationsPartOf, type Relation } from "./relations";
import { unpackPart } from "./unpack-part";
import { partsOfPackage, type PackedPart } from "./zip-directory";

/** Bytes. A workbook of 100,000 tests with 30 columns unpacks to about 150 MB. */
export const MOST_UNPACKED = 300e6;
/** Above this size a part that shrinks to next to nothing holds next to nothing. */
const LARGE = 20e6;
const MOST_SHRUNK = 200;
const MOST_PARTS = 20_000;
const MEGABYTE = 1e6;

/** A package whose parts are unpacked when they are asked for, once each. */
export class OpenedPackage {
  private readonly parts: ReadonlyMap<string, PackedPart>;
  private readonly unpacked = new Map<string, Promise<Uint8Array>>();

  /**
   * Looks at the directory only.
   *
   * @throws Problem `file-damaged`, `file-unpacks-too-large`.
   */
  constructor(readonly bytes: Uint8Array) {
    const parts = partsOfPackage(bytes);
    const size = parts.reduce((sum, part) => sum + part.size, 0);
    const shrunk = parts.some(
      (part) => part.size > LARGE && part.size > MOST_SHRUNK * part.packedSize,
    );
    if (size > MOST_UNPACKED || shrunk || parts.length > MOST_PARTS)
      throw new Problem("file-unpacks-too-large", {
        size: Math.round(size / MEGABYTE),
        most: MOST_UNPACKED / MEGABYTE,
      });
    this.parts = new Map(parts.map((part) => [part.name, part]));
  }

  names(): string[] {
    return [...this.parts.keys()];
  }

  has(name: string): boolean {
    return this.parts.has(name);
  }

  /** @throws Problem `file-damaged` where the part is not there or not whole. */
  content(name: string): Promise<Uint8Array> {
    const there = this.unpacked.get(name);
    if (there) return there;
    const part = this.parts.get(name);
    if (!part) return Promise.reject(new Problem("file-damaged", { part: name }));
    const unpacked = unpackPart(this.bytes, part);
    this.unpacked.set(name, unpacked);
    return unpacked;
  }

  async text(name: string): Promise<string> {
    return new TextDecoder().decode(await this.content(name));
  }

  /** What a part leads to; nothing where it leads nowhere. The empty name is the package itself. */
  async relations(part: string): Promise<Relation[]> {
    const name = relationsPartOf(part);
    return this.has(name) ? relationsIn(await this.text(name), part) : [];
  }
}
