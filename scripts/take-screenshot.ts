/**
 * Takes the picture of the workbench in the README, docs/workbench.png: `npm run screenshot`.
 *
 * It shows the build, so run `npm run build` first. CHROME_PATH names the browser that takes it.
 */
import { chromium } from "playwright-core";
import { serveDist } from "../tests/browser/dist-server";
import { WorkbenchPage } from "../tests/browser/workbench-page";

const FILE = "docs/workbench.png";

async function takeScreenshot(): Promise<void> {
  const server = await serveDist();
  const browser = await chromium.launch({
    executablePath: process.env.CHROME_PATH ?? "/usr/bin/chromium",
    args: ["--no-sandbox"],
  });
  try {
    const workbench = await WorkbenchPage.open(browser, server.origin);
    const { page } = workbench;
    // The last formula of the sample has its result.
    await workbench.untilShown("W2", "5.75");
    await page.getByRole("checkbox", { name: "Mark what is found" }).check();
    await page.getByRole("button", { name: "Check", exact: true }).click();
    await page.getByText("Marked cells").waitFor();
    await page
      .getByRole("option", { name: /correction for alcohol/ })
      .first()
      .click();
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: FILE });
    console.log(FILE);
  } finally {
    await browser.close();
    await server.close();
  }
}

void takeScreenshot();
