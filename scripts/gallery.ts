/**
 * Takes the pictures of the workbench and writes the page that shows them: `npm run gallery`.
 *
 * They show the build, so run `npm run build` first. The browser is the one of the tests.
 */
import { writeFileSync } from "node:fs";
import findBrowser from "../tests/browser/find-browser.cjs";
import { launchBrowser } from "../tests/browser/browser";
import { serveDist } from "../tests/browser/dist-server";
import { WorkbenchPage } from "../tests/browser/workbench-page";
import { PICTURES } from "./gallery/pictures";

/** Longer than any change of colour or place on the page takes. */
const AT_REST = 400;

async function takePictures(): Promise<void> {
  await findBrowser();
  const server = await serveDist();
  const browser = await launchBrowser();
  try {
    const workbench = await WorkbenchPage.open(browser, server.origin);
    // The last formula of the sample has its result.
    await workbench.untilShown("W2", "5.75");
    for (const { name, show } of PICTURES) {
      await show(workbench);
      await workbench.page.evaluate(() => document.fonts.ready);
      await workbench.page.waitForTimeout(AT_REST);
      await workbench.page.screenshot({ path: `docs/${name}.png` });
      console.log(`docs/${name}.png`);
    }
  } finally {
    await browser.close();
    await server.close();
  }
}

const PAGE = `# Pictures

Made by \`npm run gallery\` from the build and the sample, a day of tests of an invented site. None was drawn by hand.

${PICTURES.map(({ name, heading, alt }) => `## ${heading}\n\n![${alt}](${name}.png)\n`).join("\n")}`;

takePictures().then(() => writeFileSync("docs/gallery.md", PAGE));
