import type { SheetPicture } from "../../hosts/sheet-host";
import { pngFile } from "../trend/chart-picture";

/** A drawing as a picture on a sheet. @param row The row on which it begins, from 0. */
export function sheetPicture(drawing: SVGSVGElement, title: string, row: number): SheetPicture {
  const size = (name: "width" | "height") => Number(drawing.getAttribute(name));
  return {
    row,
    width: size("width"),
    height: size("height"),
    title,
    png: async () => new Uint8Array(await (await pngFile(drawing)).arrayBuffer()),
  };
}
