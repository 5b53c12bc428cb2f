import type { OpenedPackage } from "./opened-package";
import { partWithContentType, partWithoutContentType } from "./content-types";
import {
  relationsIn,
  relationsPartOf,
  withoutRelation,
  withRelation,
  type Relation,
} from "./relations";
import { packageWith } from "./write-package";

const CONTENT_TYPES = "[Content_Types].xml";

/** Changes to a package on their way: parts are read with what was changed in them before. */
export class PackageEdits {
  private readonly changed = new Map<string, string | Uint8Array | null>();

  constructor(private readonly opened: OpenedPackage) {}

  async text(part: string): Promise<string> {
    const changed = this.changed.get(part);
    return typeof changed === "string" ? changed : await this.opened.text(part);
  }

  has(part: string): boolean {
    const changed = this.changed.get(part);
    return changed === undefined ? this.opened.has(part) : changed !== null;
  }

  /** Nothing is kept where the text is what stands there already. */
  async set(part: string, text: string): Promise<void> {
    if (!this.has(part) || (await this.text(part)) !== text) this.changed.set(part, text);
  }

  async remove(part: string): Promise<void> {
    this.changed.set(part, null);
    await this.set(CONTENT_TYPES, partWithoutContentType(await this.text(CONTENT_TYPES), part));
  }

  /** Adds a part under a name that is free, such as "xl/worksheets/sheet4.xml" for "sheet". */
  async add(
    beginning: string,
    ending: string,
    content: string | Uint8Array,
    contentType: string,
  ): Promise<string> {
    let number = 1;
    while (this.has(`${beginning}${number}${ending}`)) number++;
    const part = `${beginning}${number}${ending}`;
    this.changed.set(part, content);
    const types = await this.text(CONTENT_TYPES);
    await this.set(CONTENT_TYPES, partWithContentType(types, part, contentType));
    return part;
  }

  async relations(part: string): Promise<Relation[]> {
    const name = relationsPartOf(part);
    return this.has(name) ? relationsIn(await this.text(name), part) : [];
  }

  /** Leads from one part to another. @returns The id of the relation. */
  async relate(part: string, kind: string, target: string): Promise<string> {
    const name = relationsPartOf(part);
    const xml = this.has(name) ? await this.text(name) : undefined;
    const taken = new Set((await this.relations(part)).map(({ id }) => id));
    let number = taken.size + 1;
    while (taken.has(`rId${number}`)) number++;
    await this.set(name, withRelation(xml, `rId${number}`, kind, target));
    return `rId${number}`;
  }

  /** Takes a relation away, and the part of relations with its last one. */
  async unrelate(part: string, id: string): Promise<void> {
    const name = relationsPartOf(part);
    const others = (await this.relations(part)).filter((each) => each.id !== id);
    if (others.length > 0) await this.set(name, withoutRelation(await this.text(name), id));
    else await this.remove(name);
  }

  /** The package with all changes, every other part byte for byte. */
  bytes(): Promise<Uint8Array> {
    const encoder = new TextEncoder();
    const parts = [...this.changed].map(
      ([part, content]) =>
        [part, typeof content === "string" ? encoder.encode(content) : content] as const,
    );
    return packageWith(this.opened.bytes, new Map(parts));
  }
}
