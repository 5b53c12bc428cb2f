import { escaped } from "../package/xml";

/** A picture on a sheet, its upper left corner in the first column. */
export interface PlacedPicture {
  /** The row on which it begins, from 0. */
  readonly row: number;
  /** In pixels of a screen. */
  readonly width: number;
  readonly height: number;
  /** What it shows, for those who do not see it. */
  readonly title: string;
  readonly png: Uint8Array;
}

const SHEETS = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const SHAPES = "http://schemas.openxmlformats.org/drawingml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
/** Of 914,400 to the inch, at 96 pixels to the inch (ECMA-376, 22.9.2.1). */
const UNITS_PER_PIXEL = 9525;

/**
 * The drawing that holds the pictures of a sheet (ECMA-376, 20.5.2).
 *
 * @param images The relation that leads to each picture's own part.
 */
export function picturesPart(
  pictures: readonly PlacedPicture[],
  images: readonly string[],
): string {
  const anchors = pictures.map((picture, i) => anchored(picture, images[i]!, i + 1));
  return (
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n` +
    `<xdr:wsDr xmlns:xdr="${SHEETS}" xmlns:a="${SHAPES}" xmlns:r="${RELATIONS}">${anchors.join("")}</xdr:wsDr>`
  );
}

function anchored(
  { row, width, height, title }: PlacedPicture,
  image: string,
  number: number,
): string {
  const size = `cx="${width * UNITS_PER_PIXEL}" cy="${height * UNITS_PER_PIXEL}"`;
  return (
    `<xdr:oneCellAnchor><xdr:from><xdr:col>0</xdr:col><xdr:colOff>0</xdr:colOff>` +
    `<xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext ${size}/>` +
    `<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="${number + 1}" name="Picture ${number}" descr="${escaped(title)}"/>` +
    `<xdr:cNvPicPr><a:picLocks noChangeAspect="1"/></xdr:cNvPicPr></xdr:nvPicPr>` +
    `<xdr:blipFill><a:blip r:embed="${image}"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill>` +
    `<xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/></a:xfrm>` +
    `<a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>`
  );
}
