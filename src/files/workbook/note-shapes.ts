import { childrenOf, rootElement, textIn, type Element } from "../package/xml";
import { blockOf, cellReference } from "./cell-reference";
import { without } from "./sheet-part";

const NAMESPACES =
  'xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"';
/** A drawing without a shape. */
export const NO_SHAPES =
  `<xml ${NAMESPACES}><o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>` +
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype></xml>';
const FIRST_NUMBER = 1025;
/** How far a note reaches to the right of its cell and down, in columns and rows. */
const WIDE = 4;
const HIGH = 7;

/**
 * The drawing behind the notes of a sheet, which says where each is shown, with shapes for some cells
 * and without those of others. Shapes of other notes, buttons and pictures are left as they are.
 */
export function withNoteShapes(
  xml: string,
  added: readonly string[],
  removed: ReadonlySet<string>,
): string {
  const gone = shapesOf(xml).filter((shape) => removed.has(cellOfShape(xml, shape)));
  const changed = without(xml, gone);
  const numbers = [...changed.matchAll(/_x0000_s(\d+)/g)].map(([, number]) => Number(number));
  let number = Math.max(FIRST_NUMBER - 1, ...numbers);
  const root = rootElement(changed)!;
  const known = /\sxmlns:v=/.test(changed.slice(root.start, root.contentStart));
  const shapes = added.map((cell) => shape(cell, ++number, known ? "" : ` ${NAMESPACES}`));
  return changed.slice(0, root.contentEnd) + shapes.join("") + changed.slice(root.contentEnd);
}

/** Whether a drawing still shows anything. */
export function hasShapes(xml: string): boolean {
  return shapesOf(xml).length > 0;
}

function shapesOf(xml: string): Element[] {
  const notShapes = ["shapelayout", "shapetype"];
  return childrenOf(xml, rootElement(xml)!).filter(({ name }) => !notShapes.includes(name));
}

/** The cell of a note's shape, as "C5"; "" for a shape that is no note. */
function cellOfShape(xml: string, shape: Element): string {
  const data = childrenOf(xml, shape).find(({ name }) => name === "ClientData");
  if (data?.attributes.ObjectType !== "Note") return "";
  const said = (wanted: string) => {
    const element = childrenOf(xml, data).find(({ name }) => name === wanted);
    return element ? Number(textIn(xml, element)) : NaN;
  };
  const [row, column] = [said("Row"), said("Column")];
  return Number.isNaN(row + column) ? "" : cellReference(row, column);
}

function shape(cell: string, number: number, namespaces: string): string {
  const { top, left } = blockOf(cell)!;
  const anchor = [left + 1, 15, Math.max(0, top - 1), 4, left + 1 + WIDE, 15, top + HIGH, 4];
  return (
    `<v:shape${namespaces} id="_x0000_s${number}" type="#_x0000_t202" ` +
    `style="position:absolute;margin-left:60pt;margin-top:2pt;width:260pt;height:100pt;z-index:1;visibility:hidden" ` +
    `fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/>` +
    `<v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/>` +
    `<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>` +
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/>` +
    `<x:Anchor>${anchor.join(", ")}</x:Anchor><x:AutoFill>False</x:AutoFill>` +
    `<x:Row>${top}</x:Row><x:Column>${left}</x:Column></x:ClientData></v:shape>`
  );
}
