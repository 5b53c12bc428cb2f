/*
 * How long the workbench does not answer while it checks, marks and writes many rows, in a browser:
 * npm run longest-tasks -- [rows]. It looks at the build and writes docs/page-figures.md.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { say } from "../src/messages/pane-catalogue";
import { launchBrowser } from "../tests/browser/browser";
import { serveDist } from "../tests/browser/dist-server";
import { WorkbenchPage } from "../tests/browser/workbench-page";

const findBrowser: () => Promise<void> = require("../tests/browser/find-browser.cjs");

const ROWS = Number(process.argv[2] ?? 100_000);
/** One test in so many has something to be marked. */
const MARKED_OF = 10;
const LONGEST_WAIT = 300_000;

/** What was measured of something that the pane does. */
interface Figures {
  readonly what: string;
  readonly seconds: number;
  readonly longestTask: number;
  /** Milliseconds from a press of Stop to the end of the work. */
  readonly stopped: number | undefined;
}

const TEXT = `# How long the page does not answer

Measured in Chromium on the workbench, by \`npm run longest-tasks\`: a table of {rows} tests, one in ${MARKED_OF} of them with something to
be marked. The longest task is the longest time for which the page took no key and no click. Times depend on the machine and on what
else it does; these are of two shared cores. What the grid does by itself is in them: that of marking is its calculation of the
rules that mark, that of writing the results its copy of a whole new sheet, and neither can be parted from outside.

{table}
`;

function loads(): string {
  const lines = ["Sample,First reading,Second reading,Alcohol (oz),Foam"];
  for (let i = 0; i < ROWS; i++) {
    lines.push(`L-${i},${5 + (i % 9) / 4},${5 + (i % 9) / 4},16,${i % MARKED_OF === 0 ? 5 : 1}`);
  }
  return `${lines.join("\n")}\n`;
}

/** Begins to look for gaps between two turns of the page. */
const startLooking = (page: Page) =>
  page.evaluate(() => {
    const seen = { longest: 0, last: performance.now(), on: true };
    Object.assign(globalThis, { seen });
    const channel = new MessageChannel();
    channel.port1.onmessage = () => {
      const now = performance.now();
      seen.longest = Math.max(seen.longest, now - seen.last);
      seen.last = now;
      if (seen.on) setTimeout(() => channel.port2.postMessage(0));
    };
    channel.port2.postMessage(0);
  });

const stopLooking = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { seen } = globalThis as unknown as { seen: { longest: number; on: boolean } };
    seen.on = false;
    return seen.longest;
  });

async function main(): Promise<void> {
  await findBrowser();
  const server = await serveDist();
  const browser = await launchBrowser();
  const { page } = await WorkbenchPage.open(browser, server.origin);
  page.setDefaultTimeout(LONGEST_WAIT);
  // What runs this script names functions by this, also those that the page gets.
  await page.evaluate("globalThis.__name = (named) => named");
  const status = page.locator("#pane").getByRole("status");
  const press = (name: string) => () => page.getByRole("button", { name, exact: true }).click();
  const figures: Figures[] = [];

  /** @param begin Begins the work, also a second time, after it was stopped. */
  async function measure(what: string, begin: () => Promise<void>, done: RegExp): Promise<void> {
    let stopped: number | undefined;
    const stop = page.getByRole("button", { name: say("pane-stop"), exact: true });
    await begin();
    await stop.waitFor({ timeout: 5_000 }).catch(() => {});
    if (await stop.isVisible()) {
      await page.waitForTimeout(300);
      stopped = await page.evaluate(
        ([word, said]) =>
          new Promise<number>((resolve) => {
            const from = performance.now();
            const all = [...document.querySelectorAll("button")];
            all.find((each) => each.textContent === word)?.click();
            const look = () => {
              const texts = [...document.querySelectorAll("#pane [role=status]")];
              const ended = !document.querySelector("#pane progress")?.checkVisibility();
              if (ended || texts.some((each) => each.textContent!.startsWith(said)))
                resolve(performance.now() - from);
              else setTimeout(look, 5);
            };
            look();
          }),
        [say("pane-stop"), say("pane-stopped").split(".")[0]!] as const,
      );
    } else await status.filter({ hasText: done }).waitFor();
    await startLooking(page);
    const from = performance.now();
    await begin();
    await status.filter({ hasText: done }).waitFor();
    const seconds = (performance.now() - from) / 1000;
    figures.push({ what, seconds, longestTask: await stopLooking(page), stopped });
    console.table(figures.at(-1));
  }

  await page.locator("#file").setInputFiles({
    name: "loads.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(loads()),
  });
  await page.waitForFunction((last) => {
    const sheet = globalThis.univer?.getActiveWorkbook()?.getActiveSheet();
    // The sheet of before may still be there, and has fewer rows.
    if (!sheet || sheet.getMaxRows() <= last) return false;
    return sheet.getRange(last, 0).getValue() === `L-${last - 1}`;
  }, ROWS);
  await measure("check", press(say("pane-check")), /^Checked/);
  const box = page.getByRole("checkbox", { name: say("pane-mark-found"), exact: true });
  await measure(
    "mark",
    async () => {
      await box.uncheck();
      await box.check();
    },
    /Marked cells/,
  );
  await measure("remove the marks", press(say("pane-unmark")), /^Marks removed/);
  await box.uncheck();
  await measure("write the results", press(say("pane-write-results")), /The results are on/);
  await browser.close();
  await server.close();
  const table = [
    "| what | seconds | longest task, ms | Stop answers in, ms |",
    "| --- | ---: | ---: | ---: |",
    ...figures.map(
      ({ what, seconds, longestTask, stopped }) =>
        `| ${what} | ${seconds.toFixed(1)} | ${Math.round(longestTask)} | ${stopped === undefined ? "cannot be stopped" : Math.round(stopped)} |`,
    ),
  ];
  const text = TEXT.replace("{rows}", ROWS.toLocaleString("en-US")).replace(
    "{table}",
    table.join("\n"),
  );
  if (process.argv[2] === undefined)
    writeFileSync(join(__dirname, "../docs/page-figures.md"), text);
}

void main();
