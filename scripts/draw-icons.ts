/**
 * Draws src/assets/icon.svg as PNGs in the sizes that Excel asks for: `npm run icons`.
 *
 * Only needed after a change of the drawing. CHROME_PATH names the browser that draws it.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { chromium } from "playwright-core";

/** Edge lengths in pixels: ribbon 16, 32 and 80; list of add-ins 32 and 64. */
const SIZES = [16, 32, 64, 80];

async function drawIcons(): Promise<void> {
  const drawing = readFileSync("src/assets/icon.svg", "utf8");
  const browser = await chromium.launch({
    executablePath: process.env.CHROME_PATH ?? "/usr/bin/chromium",
    args: ["--no-sandbox"],
  });
  for (const size of SIZES) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<style>body { margin: 0 } svg { display: block; width: ${size}px }</style>${drawing}`,
    );
    const file = `src/assets/icon-${size}.png`;
    writeFileSync(file, await page.screenshot({ omitBackground: true }));
    console.log(file);
  }
  await browser.close();
}

void drawIcons();
