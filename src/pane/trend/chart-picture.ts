import type { Trend } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { paperInk } from "./chart-ink";
import { svg } from "./svg";
import { trendChart } from "./trend-chart";

/** Size of a picture that is kept, px; what is made of pixels has twice as many. */
const WIDTH = 720;
const HEIGHT = 380;
const PIXELS = 2;
/** Space above the chart for its title. */
const TITLE = 30;
/** What a letter of the title needs at most. */
const LETTER_WIDTH = 8;

/**
 * A chart that can stand alone: with its title, on a ground of its own, in the colours for paper.
 */
export function chartDrawing(trend: Trend, title: string, decimal: DecimalMark): SVGSVGElement {
  const ink = paperInk();
  const { picture } = trendChart(trend, { width: WIDTH, height: HEIGHT, ink, decimal });
  const height = Number(picture.getAttribute("height")) + TITLE;
  const content = svg("g", { transform: `translate(0 ${TITLE})` }, ...picture.childNodes);
  // A long title is drawn closer rather than cut.
  const room = WIDTH - 20;
  const textLength = title.length * LETTER_WIDTH > room ? room : undefined;
  picture.setAttribute("height", String(height));
  picture.setAttribute("viewBox", `0 0 ${WIDTH} ${height}`);
  picture.append(
    svg("title", {}, title),
    svg("rect", { width: WIDTH, height, fill: ink.ground }),
    svg(
      "text",
      {
        x: 10,
        y: 20,
        "font-size": 14,
        "font-weight": 600,
        textLength,
        lengthAdjust: "spacingAndGlyphs",
      },
      title,
    ),
    content,
  );
  return picture;
}

/** The file of a drawing. */
export function svgFile(drawing: SVGSVGElement): Blob {
  return new Blob([new XMLSerializer().serializeToString(drawing)], { type: "image/svg+xml" });
}

/** The file of a drawing as pixels, 1440 wide. */
export async function pngFile(drawing: SVGSVGElement): Promise<Blob> {
  const url = URL.createObjectURL(svgFile(drawing));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = image.naturalWidth * PIXELS;
    canvas.height = image.naturalHeight * PIXELS;
    canvas.getContext("2d")!.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob(
        (blob) => (blob ? resolve(blob) : reject(new Error("no picture"))),
        "image/png",
      ),
    );
  } finally {
    URL.revokeObjectURL(url);
  }
}
