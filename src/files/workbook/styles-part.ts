import { childrenOf, rootElement, type Element } from "../package/xml";

/** The lists of a styles part, in the order that the standard (ECMA-376, 18.8.39) sets. */
const LISTS = [
  "numFmts",
  "fonts",
  "fills",
  "borders",
  "cellStyleXfs",
  "cellXfs",
  "cellStyles",
  "dxfs",
  "tableStyles",
  "colors",
  "extLst",
];

/** A styles part with an entry, and the number of the entry in its list. */
export interface WithStyle {
  readonly xml: string;
  readonly number: number;
}

/** The format of a mark, taken from the styles where it stands there already, else put last. */
export function withMarkFormat(xml: string, fill: string, ink: string): WithStyle {
  const color = (web: string) => `FF${web.slice(1).toUpperCase()}`;
  return withEntry(
    xml,
    "dxfs",
    (p) =>
      `<${p}dxf><${p}font><${p}color rgb="${color(ink)}"/></${p}font>` +
      `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="${color(fill)}"/>` +
      `<${p}bgColor rgb="${color(fill)}"/></${p}patternFill></${p}fill></${p}dxf>`,
  );
}

/** The format of a bold heading in the workbook's usual font. */
export function withBoldFormat(xml: string): WithStyle {
  const fonts = listOf(xml, "fonts");
  const usual = fonts && childrenOf(xml, fonts)[0];
  const font = usual ? xml.slice(usual.contentStart, usual.contentEnd) : "";
  const withBold = withEntry(xml, "fonts", (p) =>
    /<(?:\w+:)?b[\s/>]/.test(font)
      ? `<${p}font>${font}</${p}font>`
      : `<${p}font><${p}b/>${font}</${p}font>`,
  );
  return withEntry(
    withBold.xml,
    "cellXfs",
    (p) =>
      `<${p}xf numFmtId="0" fontId="${withBold.number}" fillId="0" borderId="0" xfId="0" applyFont="1"/>`,
  );
}

function withEntry(xml: string, list: string, written: (prefix: string) => string): WithStyle {
  const root = rootElement(xml)!;
  const prefix = root.prefix && `${root.prefix}:`;
  const entry = written(prefix);
  const there = listOf(xml, list);
  const entries = there ? childrenOf(xml, there) : [];
  const standing = entries.findIndex(({ start, end }) => xml.slice(start, end) === entry);
  if (standing >= 0) return { xml, number: standing };
  const number = entries.length;
  const count = String(number + 1);
  if (!there) {
    const added = `<${prefix}${list} count="${count}">${entry}</${prefix}${list}>`;
    const place = LISTS.indexOf(list);
    const before = childrenOf(xml, root).filter(({ name }) => LISTS.indexOf(name) < place);
    const at = before.at(-1)?.end ?? root.contentStart;
    return { xml: xml.slice(0, at) + added + xml.slice(at), number };
  }
  const tag = xml.slice(there.start, there.contentStart).replace(/\s*\/>$/, ">");
  const opening = /\bcount="\d*"/.test(tag)
    ? tag.replace(/\bcount="\d*"/, `count="${count}"`)
    : tag.replace(/>$/, ` count="${count}">`);
  const content = xml.slice(there.contentStart, there.contentEnd);
  const whole = `${opening}${content}${entry}</${prefix}${list}>`;
  return { xml: xml.slice(0, there.start) + whole + xml.slice(there.end), number };
}

function listOf(xml: string, list: string): Element | undefined {
  return childrenOf(xml, rootElement(xml)!).find(({ name }) => name === list);
}
