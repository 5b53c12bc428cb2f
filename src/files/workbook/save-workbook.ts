import { OpenedPackage } from "../package/opened-package";
import { PackageEdits } from "../package/package-edits";
import { childElements, childrenOf, rootElement } from "../package/xml";
import { withChangedCells, type ChangedCell } from "./changed-cells";
import { emptyWorkbook } from "./empty-workbook";
import { withMarkRules, type MarkRule } from "./mark-rules";
import { sheetPart, withSheet, type NewSheet } from "./new-sheet";
import { NO_SHAPES, hasShapes, withNoteShapes } from "./note-shapes";
import { NO_NOTES, notesIn, withNotes } from "./notes-part";
import { picturesPart, type PlacedPicture } from "./pictures-part";
import { sheetText, without, withElement, type SheetText } from "./sheet-part";
import { withBoldFormat, withMarkFormat, type WithStyle } from "./styles-part";
import { workbookParts } from "./workbook-parts";

/** What shall stand in a sheet of a workbook, besides what stands in it. */
export interface SheetChanges {
  readonly sheet: string;
  /** All rules of ours; others of ours are taken off. */
  readonly rules: readonly MarkRule[];
  /** Notes that changed, by cell as "C5": the text, or null for none. */
  readonly notes: ReadonlyMap<string, string | null>;
  readonly cells: readonly ChangedCell[];
}

/** A workbook as saved. */
export interface SavedWorkbook {
  readonly bytes: Uint8Array;
  /** Cells that could not be changed, since their formula fills other cells too. */
  readonly left: readonly (ChangedCell & { readonly sheet: string })[];
}

/** What stands before the settings of calculation (ECMA-376, 18.2.27), as far as it matters. */
const BEFORE_CALCULATION = ["sheets", "functionGroups", "externalReferences", "definedNames"];
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/**
 * The workbook with changes in it, and everything else byte for byte as it was: styles, charts,
 * pictures, names and whatever nobody here knows.
 *
 * @param original The file as opened; undefined for sheets that came from no workbook.
 * @param added New sheets, put behind the others. Changes may name them too.
 * @param isOurs Whether the formula of a conditional format is one that we write.
 * @throws Problem `file-damaged`.
 */
export async function saveWorkbook(
  original: Uint8Array | undefined,
  added: readonly NewSheet[],
  changes: readonly SheetChanges[],
  isOurs: (formula: string) => boolean,
): Promise<SavedWorkbook> {
  const opened = new OpenedPackage(original ?? (await emptyWorkbook()));
  const { workbook, styles, sheets } = await workbookParts(opened);
  const edits = new PackageEdits(opened);
  const style = async (change: (xml: string) => WithStyle): Promise<number> => {
    if (!styles) return 0;
    const { xml, number } = change(await edits.text(styles));
    await edits.set(styles, xml);
    return number;
  };
  const parts = new Map(sheets.map(({ name, part }) => [name, part]));
  for (const sheet of added) {
    const bold = sheet.heading || sheet.bold ? await style(withBoldFormat) : 0;
    const part = await edits.add(
      `${folderOf(workbook)}worksheets/sheet`,
      ".xml",
      sheetPart(sheet, bold),
      `${TYPE}.worksheet+xml`,
    );
    if (sheet.pictures && sheet.pictures.length > 0)
      await withPictures(edits, part, sheet.pictures);
    const relation = await edits.relate(workbook, "worksheet", part);
    await edits.set(workbook, withSheet(await edits.text(workbook), sheet.name, relation));
    parts.set(sheet.name, part);
  }
  const left: (ChangedCell & { sheet: string })[] = [];
  for (const { sheet, rules, notes, cells } of changes) {
    const part = parts.get(sheet);
    if (!part) continue;
    const before = sheetText(await edits.text(part));
    const changed = withChangedCells(before, cells);
    left.push(...changed.left.map((cell) => ({ ...cell, sheet })));
    let text = await withMarkRules(changed.sheet, rules, isOurs, ({ fill, ink }) =>
      style((xml) => withMarkFormat(xml, fill, ink)),
    );
    if (notes.size > 0) text = await withChangedNotes(edits, part, text, notes);
    if (text !== before) await edits.set(part, text.head + text.tail);
    if (cells.length > changed.left.length) await computeOnOpening(edits, workbook);
  }
  return { bytes: await edits.bytes(), left };
}

async function withPictures(
  edits: PackageEdits,
  sheet: string,
  pictures: readonly PlacedPicture[],
): Promise<void> {
  const folder = folderOf(folderOf(sheet).slice(0, -1));
  const drawing = await edits.add(
    `${folder}drawings/drawing`,
    ".xml",
    picturesPart([], []),
    "application/vnd.openxmlformats-officedocument.drawing+xml",
  );
  const images: string[] = [];
  for (const { png } of pictures) {
    const image = await edits.add(`${folder}media/image`, ".png", png, "image/png");
    images.push(await edits.relate(drawing, "image", image));
  }
  await edits.set(drawing, picturesPart(pictures, images));
  const relation = await edits.relate(sheet, "drawing", drawing);
  const { head, tail } = namingDrawing(sheetText(await edits.text(sheet)), "drawing", relation);
  await edits.set(sheet, head + tail);
}

async function withChangedNotes(
  edits: PackageEdits,
  sheet: string,
  text: SheetText,
  wanted: ReadonlyMap<string, string | null>,
): Promise<SheetText> {
  const relations = await edits.relations(sheet);
  const notes = relations.find(({ kind }) => kind === "comments");
  const before = notes ? await edits.text(notes.target) : NO_NOTES;
  const after = withNotes(before, wanted);
  if (after === before) return text;
  const [had, has] = [notesIn(before), notesIn(after)];
  if (has.size === 0 && notes) {
    await edits.remove(notes.target);
    await edits.unrelate(sheet, notes.id);
  } else if (notes) await edits.set(notes.target, after);
  else {
    const folder = `${folderOf(folderOf(sheet).slice(0, -1))}comments`;
    const part = await edits.add(folder, ".xml", after, `${TYPE}.comments+xml`);
    await edits.relate(sheet, "comments", part);
  }
  const added = [...has.keys()].filter((cell) => !had.has(cell));
  const removed = new Set([...had.keys()].filter((cell) => !has.has(cell)));
  return withShapes(edits, sheet, text, added, removed);
}

/** The shapes of notes stand in a drawing that the sheet names by its relation. */
async function withShapes(
  edits: PackageEdits,
  sheet: string,
  text: SheetText,
  added: readonly string[],
  removed: ReadonlySet<string>,
): Promise<SheetText> {
  if (added.length === 0 && removed.size === 0) return text;
  const named = childElements(text.tail).find(({ name }) => name === "legacyDrawing");
  const id = Object.entries(named?.attributes ?? {}).find(([name]) => /:id$/.test(name))?.[1];
  const drawing = (await edits.relations(sheet)).find((each) => each.id === id);
  if (!drawing) {
    const part = await edits.add(
      `${folderOf(folderOf(sheet).slice(0, -1))}drawings/vmlDrawing`,
      ".vml",
      withNoteShapes(NO_SHAPES, added, removed),
      "application/vnd.openxmlformats-officedocument.vmlDrawing",
    );
    return namingDrawing(text, "legacyDrawing", await edits.relate(sheet, "vmlDrawing", part));
  }
  const shapes = withNoteShapes(await edits.text(drawing.target), added, removed);
  if (hasShapes(shapes)) {
    await edits.set(drawing.target, shapes);
    return text;
  }
  await edits.remove(drawing.target);
  await edits.unrelate(sheet, drawing.id);
  return { ...text, tail: without(text.tail, [named!]) };
}

/** A sheet names a drawing of its by the relation that leads there. */
function namingDrawing(
  text: SheetText,
  kind: "drawing" | "legacyDrawing",
  relation: string,
): SheetText {
  const element = `<${text.prefix}${kind} xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="${relation}"/>`;
  return { ...text, tail: withElement(text.tail, kind, element) };
}

/** Results of formulas that rest on a changed cell are old: whoever opens the file computes them. */
async function computeOnOpening(edits: PackageEdits, workbook: string): Promise<void> {
  const chain = (await edits.relations(workbook)).find(({ kind }) => kind === "calcChain");
  if (chain) {
    await edits.remove(chain.target);
    await edits.unrelate(workbook, chain.id);
  }
  const xml = await edits.text(workbook);
  const tag = /<((?:[\w.-]+:)?)calcPr(?=[\s/>])/.exec(xml);
  if (tag) {
    const open = xml.slice(tag.index, xml.indexOf(">", tag.index));
    const changed = `${tag[0]} fullCalcOnLoad="1"${open
      .slice(tag[0].length)
      .replace(/\sfullCalcOnLoad="[^"]*"/, "")}`;
    await edits.set(
      workbook,
      xml.replace(open, () => changed),
    );
    return;
  }
  const root = rootElement(xml)!;
  const before = childrenOf(xml, root).filter(({ name }) => BEFORE_CALCULATION.includes(name));
  const at = before.at(-1)!.end;
  const p = root.prefix && `${root.prefix}:`;
  await edits.set(workbook, `${xml.slice(0, at)}<${p}calcPr fullCalcOnLoad="1"/>${xml.slice(at)}`);
}

function folderOf(part: string): string {
  return part.slice(0, part.lastIndexOf("/") + 1);
}
