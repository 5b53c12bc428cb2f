import { childrenOf, escaped, rootElement } from "./xml";

/** The list of content types with a part on it, unless its ending says the type already. */
export function partWithContentType(xml: string, part: string, contentType: string): string {
  const root = rootElement(xml)!;
  const ending = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
  const known = childrenOf(xml, root).some(
    ({ name, attributes }) =>
      name === "Default" &&
      attributes.Extension?.toLowerCase() === ending &&
      attributes.ContentType === contentType,
  );
  if (known) return xml;
  const line = `<Override PartName="/${escaped(part)}" ContentType="${contentType}"/>`;
  return xml.slice(0, root.contentEnd) + line + xml.slice(root.contentEnd);
}

/** The list of content types without a part. */
export function partWithoutContentType(xml: string, part: string): string {
  const line = childrenOf(xml, rootElement(xml)!).find(
    ({ name, attributes }) =>
      name === "Override" && attributes.PartName?.toLowerCase() === `/${part}`.toLowerCase(),
  );
  return line ? xml.slice(0, line.start) + xml.slice(line.end) : xml;
}
