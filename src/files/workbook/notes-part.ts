import { childrenOf, escaped, rootElement, textIn, type Element } from "../package/xml";
import { without } from "./sheet-part";

const NAMESPACE = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
/** A part of notes without a note. */
export const NO_NOTES = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<comments xmlns="${NAMESPACE}"><authors></authors><commentList></commentList></comments>`;

/** The notes of a part: their text by cell, as "C5". */
export function notesIn(xml: string): Map<string, string> {
  return new Map(
    notesOf(xml).map((note) => [cellOf(note), textIn(xml, textElement(xml, note) ?? note)]),
  );
}

/**
 * A part of notes with some changed. Notes whose text stays are left as they are, with all their
 * formats.
 *
 * @param wanted By cell, the text that shall stand there; null for no note.
 */
export function withNotes(xml: string, wanted: ReadonlyMap<string, string | null>): string {
  const there = notesIn(xml);
  const gone = notesOf(xml).filter((note) => {
    const text = wanted.get(cellOf(note));
    return text !== undefined && text !== there.get(cellOf(note));
  });
  const added = [...wanted].filter(
    ([cell, text]) => text !== null && text !== there.get(cell),
  ) as (readonly [string, string])[];
  let changed = without(xml, gone);
  if (added.length === 0) return changed;
  const [withOurs, author] = withAuthor(changed);
  changed = withOurs;
  const { prefix } = rootElement(changed)!;
  const p = prefix && `${prefix}:`;
  const notes = added.map(
    ([cell, text]) =>
      `<${p}comment ref="${cell}" authorId="${author}"><${p}text><${p}t xml:space="preserve">` +
      `${escaped(text)}</${p}t></${p}text></${p}comment>`,
  );
  return within(changed, "commentList", notes.join(""));
}

const AUTHOR = "FRESH";

function withAuthor(xml: string): [xml: string, number: number] {
  const root = rootElement(xml)!;
  const list = childrenOf(xml, root).find(({ name }) => name === "authors");
  const authors = list ? childrenOf(xml, list) : [];
  const there = authors.findIndex((each) => textIn(xml, each) === AUTHOR);
  if (there >= 0) return [xml, there];
  const p = root.prefix && `${root.prefix}:`;
  return [within(xml, "authors", `<${p}author>${AUTHOR}</${p}author>`), authors.length];
}

/** The part with something put last into one of its lists. */
function within(xml: string, list: string, content: string): string {
  const root = rootElement(xml)!;
  const element = childrenOf(xml, root).find(({ name }) => name === list)!;
  if (element.contentStart < element.end)
    return xml.slice(0, element.contentEnd) + content + xml.slice(element.contentEnd);
  const name = element.prefix ? `${element.prefix}:${list}` : list;
  return `${xml.slice(0, element.start)}<${name}>${content}</${name}>${xml.slice(element.end)}`;
}

function notesOf(xml: string): Element[] {
  const list = childrenOf(xml, rootElement(xml)!).find(({ name }) => name === "commentList");
  return list ? childrenOf(xml, list).filter(({ name }) => name === "comment") : [];
}

function textElement(xml: string, note: Element): Element | undefined {
  return childrenOf(xml, note).find(({ name }) => name === "text");
}

function cellOf({ attributes }: Element): string {
  return (attributes.ref ?? "").replaceAll("$", "");
}
