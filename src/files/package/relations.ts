import { childrenOf, escaped, rootElement } from "./xml";

/** What a part of a package leads to. */
export interface Relation {
  readonly id: string;
  /** The last word of its type, such as "worksheet", alike in both editions of the standard. */
  readonly kind: string;
  /** Name of the part that it leads to; for one outside the package the address as written. */
  readonly target: string;
  readonly outside: boolean;
}

/** The part that holds the relations of a part: "xl/_rels/workbook.xml.rels". */
export function relationsPartOf(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** The relations of a part, from the text of its relations part. */
export function relationsIn(xml: string, ofPart: string): Relation[] {
  const root = rootElement(xml);
  if (!root) return [];
  return childrenOf(xml, root).map(({ attributes }) => {
    const { Id = "", Type = "", Target = "", TargetMode } = attributes;
    const outside = TargetMode === "External";
    const target = outside ? Target : partAt(Target, ofPart);
    return { id: Id, kind: Type.slice(Type.lastIndexOf("/") + 1), target, outside };
  });
}

/** The name of the part to which a target leads from a part. */
function partAt(target: string, fromPart: string): string {
  const from = target.startsWith("/") ? [] : fromPart.split("/").slice(0, -1);
  const path: string[] = [];
  for (const step of [...from, ...target.split("/")])
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  return path.join("/");
}

const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const KINDS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";
const EMPTY = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${RELATIONS}"></Relationships>`;

/** A relations part with one more relation; without a part, a new one. */
export function withRelation(
  xml: string = EMPTY,
  id: string,
  kind: string,
  target: string,
): string {
  const root = rootElement(xml)!;
  const prefix = root.prefix && `${root.prefix}:`;
  const line = `<${prefix}Relationship Id="${id}" Type="${KINDS}${kind}" Target="/${escaped(target)}"/>`;
  return root.contentStart === root.end
    ? xml.slice(0, root.start) + EMPTY.slice(EMPTY.indexOf("<Rel")).replace("><", `>${line}<`)
    : xml.slice(0, root.contentEnd) + line + xml.slice(root.contentEnd);
}

/** A relations part without one of its relations. */
export function withoutRelation(xml: string, id: string): string {
  const line = childrenOf(xml, rootElement(xml)!).find(({ attributes }) => attributes.Id === id);
  return line ? xml.slice(0, line.start) + xml.slice(line.end) : xml;
}
