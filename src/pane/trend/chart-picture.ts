/** Space above the chart for its title, px on the screen. */
const TITLE_HEIGHT = 28;

/**
 * Makes a picture of a chart, on a ground of its own and with its title, so that it can stand alone.
 *
 * @param chart The canvas of the chart.
 * @param title What the picture shows.
 * @param colours Of the ground and of the title.
 */
export function chartPicture(
  chart: HTMLCanvasElement,
  title: string,
  colours: { readonly ground: string; readonly text: string },
): Promise<Blob> {
  const scale = devicePixelRatio;
  const top = TITLE_HEIGHT * scale;
  const picture = document.createElement("canvas");
  picture.width = chart.width;
  picture.height = chart.height + top;
  const ctx = picture.getContext("2d")!;
  ctx.fillStyle = colours.ground;
  ctx.fillRect(0, 0, picture.width, picture.height);
  ctx.fillStyle = colours.text;
  ctx.font = `600 ${13 * scale}px system-ui, sans-serif`;
  ctx.textBaseline = "middle";
  ctx.fillText(title, 10 * scale, top / 2, picture.width - 20 * scale);
  ctx.drawImage(chart, 0, top);
  return new Promise((resolve, reject) =>
    picture.toBlob((blob) => (blob ? resolve(blob) : reject(new Error("no picture"))), "image/png"),
  );
}

/** Offers a file to be saved. */
export function saveFile(name: string, content: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
