/** An element in the text of a part: where it stands, its attributes, and what is between its tags. */
export interface Element {
  /** Without the prefix of its namespace. */
  readonly name: string;
  readonly prefix: string;
  readonly start: number;
  readonly end: number;
  /** Between the tags; both at the end of the tag where the element has no content. */
  readonly contentStart: number;
  readonly contentEnd: number;
  readonly attributes: Readonly<Record<string, string>>;
}

const TAG =
  /<(?:!--[\s\S]*?-->|!\[CDATA\[[\s\S]*?\]\]>|\?[\s\S]*?\?>|(\/?)((?:[\w.-]+:)?[\w.-]+)((?:"[^"]*"|'[^']*'|[^>"'])*?)(\/?)>)/g;
const ATTRIBUTE = /([\w.:-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const ENTITY = /&(?:#x([0-9a-f]+)|#(\d+)|(amp|lt|gt|quot|apos));/gi;
const NAMED = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" } as const;
const SPECIAL = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" } as const;
// eslint-disable-next-line no-control-regex
const NOT_IN_XML = /[\0-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/g;

/**
 * The elements that stand directly in a stretch of XML, in their order. What is inside them is
 * skipped and looked at when it is asked for.
 */
export function childElements(xml: string, from = 0, to = xml.length): Element[] {
  const children: Element[] = [];
  const tags = new RegExp(TAG);
  tags.lastIndex = from;
  let depth = 0;
  let open: Omit<Element, "end" | "contentEnd"> | undefined;
  for (let tag = tags.exec(xml); tag && tag.index < to; tag = tags.exec(xml)) {
    const [text, closing, written, attributes = "", empty] = tag;
    if (!written) continue;
    const end = tag.index + text.length;
    if (closing) {
      depth--;
      // The end of what the stretch itself stands in.
      if (depth < 0) break;
      if (depth === 0 && open) children.push({ ...open, end, contentEnd: tag.index });
      continue;
    }
    if (depth === 0) {
      const [name, prefix = ""] = written.split(":").reverse() as [string, string?];
      const start = tag.index;
      open = { name, prefix, start, contentStart: end, attributes: attributesOf(attributes) };
      if (empty) children.push({ ...open, end, contentEnd: end });
    }
    if (!empty) depth++;
  }
  return children;
}

/** The first element of a part, which holds all others. */
export function rootElement(xml: string): Element | undefined {
  return childElements(xml)[0];
}

/** The elements directly in another one. */
export function childrenOf(xml: string, element: Element): Element[] {
  return childElements(xml, element.contentStart, element.contentEnd);
}

/** All text inside an element, as it reads. */
export function textIn(xml: string, element: Element): string {
  return unescaped(xml.slice(element.contentStart, element.contentEnd).replace(/<[^>]*>/g, ""));
}

/** A text as it is written in a part; characters that XML does not know are left out. */
export function escaped(text: string): string {
  return text
    .replace(NOT_IN_XML, "")
    .replace(/[&<>"]/g, (sign) => SPECIAL[sign as keyof typeof SPECIAL]);
}

function attributesOf(written: string): Record<string, string> {
  return Object.fromEntries(
    [...written.matchAll(ATTRIBUTE)].map(([, name, quoted, single]) => [
      name,
      unescaped(quoted ?? single ?? ""),
    ]),
  );
}

function unescaped(text: string): string {
  return text.replace(ENTITY, (_, hex?: string, decimal?: string, name?: keyof typeof NAMED) => {
    if (name) return NAMED[name.toLowerCase() as keyof typeof NAMED];
    const code = hex ? parseInt(hex, 16) : Number(decimal);
    return code <= 0x10ffff ? String.fromCodePoint(code) : "";
  });
}
