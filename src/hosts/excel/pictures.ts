import type { SheetPicture } from "../sheet-host";

/** Points to a pixel of a screen. */
const POINTS_PER_PIXEL = 0.75;
/** Bytes that are made to letters at once; Excel takes a picture as letters. */
const PIECE = 8192;

/** Puts pictures on their rows of a sheet; they go with the cells below them. */
export async function putPictures(
  sheet: Excel.Worksheet,
  pictures: readonly SheetPicture[],
): Promise<void> {
  if (pictures.length === 0) return;
  const drawn = await Promise.all(pictures.map((picture) => picture.png()));
  const cells = pictures.map(({ row }) => sheet.getRangeByIndexes(row, 0, 1, 1));
  for (const cell of cells) cell.load("top");
  await sheet.context.sync();
  pictures.forEach(({ width, height, title }, i) => {
    const shape = sheet.shapes.addImage(inLetters(drawn[i]!));
    shape.left = 0;
    shape.top = cells[i]!.top;
    shape.width = width * POINTS_PER_PIXEL;
    shape.height = height * POINTS_PER_PIXEL;
    shape.altTextDescription = title;
  });
}

function inLetters(bytes: Uint8Array): string {
  const pieces: string[] = [];
  for (let at = 0; at < bytes.length; at += PIECE)
    pieces.push(String.fromCharCode(...bytes.subarray(at, at + PIECE)));
  return btoa(pieces.join(""));
}
