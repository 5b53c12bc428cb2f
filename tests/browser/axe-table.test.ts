import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { say } from "../../src/messages/pane-catalogue";
import { launchBrowser } from "./browser";
import { serveDist } from "./dist-server";
import { WorkbenchPage } from "./workbench-page";

jest.setTimeout(120_000);
jest.retryTimes(1, { logErrorsBeforeRetry: true });

const TABS = [
  ...(["check", "test", "trend", "report", "functions"] as const).map((id) =>
    say(`pane-page-${id}`),
  ),
];
const THEMES = {
  light: { colorScheme: "light", forcedColors: "none" },
  dark: { colorScheme: "dark", forcedColors: "none" },
  forced: { colorScheme: "light", forcedColors: "active" },
} as const;
/** Widths of the pane, px: what is left of the least that Excel gives, the usual, and a wide one. */
const WIDTHS = [320, 350, 450] as const;

/** A theme changes colours and nothing else, so the other themes are looked at with these rules alone. */
const OF_COLOURS = ["color-contrast", "link-in-text-block", "target-size"];

let server: Awaited<ReturnType<typeof serveDist>>;
let browser: Browser;
let workbench: WorkbenchPage;
let page: Page;

beforeAll(async () => {
  server = await serveDist();
  browser = await launchBrowser();
  workbench = await WorkbenchPage.open(browser, server.origin);
  page = workbench.page;
  await page.evaluate(axe.source);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** What axe finds in the pane at each width, and whether anything of it is cut off at the side. */
function faultsAtWidths(rules: readonly string[] | undefined): Promise<string[][]> {
  return page.evaluate(
    async ([widths, only]) => {
      const pane = document.getElementById("pane")!;
      const inPage = globalThis as unknown as { axe: typeof axe };
      const all: string[][] = [];
      for (const width of widths) {
        pane.style.width = `${width}px`;
        pane.style.minWidth = "0";
        pane.style.flex = "none";
        const { violations } = await inPage.axe.run(pane, {
          resultTypes: ["violations"],
          ...(only && { runOnly: { type: "rule", values: [...only] } }),
        });
        const cut = pane.scrollWidth > pane.clientWidth + 1 ? ["wider than the pane"] : [];
        all.push([...violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`), ...cut]);
      }
      pane.removeAttribute("style");
      return all;
    },
    [WIDTHS, rules] as const,
  );
}

const STATES: readonly (readonly [name: string, reach: () => Promise<void>])[] = [
  ["nothing checked", async () => {}],
  [
    "checked, a void test under the cursor",
    async () => {
      await page.getByRole("button", { name: "Check", exact: true }).click();
      await page.locator("#pane").getByRole("status").filter({ hasText: "Checked:" }).waitFor();
      await workbench.click("B8");
    },
  ],
];

test("axe finds nothing in any state and tab of the pane, in any theme, at any width", async () => {
  const lines: string[] = [];
  const faults: string[] = [];
  for (const [state, reach] of STATES) {
    await reach();
    for (const tab of TABS) {
      await page.locator("#pane").getByRole("tab", { name: tab, exact: true }).click();
      const counts: string[] = [];
      for (const [theme, media] of Object.entries(THEMES)) {
        await page.emulateMedia(media);
        for (const [i, found] of (
          await faultsAtWidths(theme === "light" ? undefined : OF_COLOURS)
        ).entries()) {
          counts.push(String(found.length).padStart(5));
          faults.push(...found.map((one) => `${state}, ${tab}, ${theme}, ${WIDTHS[i]}: ${one}`));
        }
      }
      lines.push(`${state}: ${tab}`.padEnd(52) + counts.join(""));
    }
  }
  await page.emulateMedia({ colorScheme: null, forcedColors: null });
  const heads = Object.keys(THEMES).flatMap((theme) => WIDTHS.map((width) => [theme, width]));
  const head = (which: 0 | 1) => heads.map((one) => String(one[which]).slice(0, 5).padStart(5));
  process.stdout.write(
    ["axe, faults in the pane".padEnd(52) + head(0).join(""), "".padEnd(52) + head(1).join("")]
      .concat(lines)
      .join("\n") + "\n",
  );
  expect(faults).toEqual([]);
});
