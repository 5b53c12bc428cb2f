import axe from "axe-core";
import type { Browser } from "playwright-core";
import { launchBrowser } from "./browser";
import { serveDist } from "./dist-server";
import { WorkbenchPage } from "./workbench-page";

jest.setTimeout(120_000);
// A machine that is busy for a moment is no fault of the page; the first failure is printed.
jest.retryTimes(1, { logErrorsBeforeRetry: true });

let server: Awaited<ReturnType<typeof serveDist>>;
let browser: Browser;
let workbench: WorkbenchPage;

beforeAll(async () => {
  server = await serveDist();
  browser = await launchBrowser();
  workbench = await WorkbenchPage.open(browser, server.origin);
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const TABS = ["Revisión", "Esta prueba", "Tendencia", "Informe"];

test("another language is chosen by its name, said by all of the page, and remembered", async () => {
  const { page, traffic } = workbench;
  const asked = traffic.requests.length;
  await page.getByRole("button", { name: "Check", exact: true }).click();
  await page.getByRole("heading", { name: /^Findings: \d+/ }).waitFor();
  await page.getByRole("button", { name: "Español" }).click();
  // What was found stays; nothing is asked for.
  await page.getByRole("heading", { name: /^Hallazgos: \d+/ }).waitFor();
  await page.getByRole("option").filter({ hasText: "3 divisiones de espuma" }).first().waitFor();
  expect(traffic.requests.slice(asked)).toEqual([]);
  expect(await page.locator("html").getAttribute("lang")).toBe("es");
  expect(await page.title()).toBe("Banco de trabajo de concreto fresco");
  await page.getByRole("button", { name: "Abrir un archivo CSV o XLSX…" }).waitFor();
  // A function of the sheet says in Spanish what is wrong.
  await page.evaluate(() => {
    const cell = globalThis.univer.getActiveWorkbook()!.getActiveSheet().getRange("U40");
    cell.setValue({ f: "=FRESH.AIR(-1,0,0)" });
    cell.activate();
  });
  await page.getByText("una lectura del medidor de -1 % no puede ser").waitFor();
  await page.getByRole("tab", { name: "Funciones" }).click();
  await page
    .getByText("Contenido de aire corregido del concreto fresco")
    .waitFor({ state: "attached" });
  expect(traffic.requests.slice(asked)).toEqual([]);
  await page.reload();
  await page.getByRole("button", { name: "Revisar", exact: true }).waitFor();
  expect(await page.locator("html").getAttribute("lang")).toBe("es");
});

test.each([
  [350, "light"],
  [320, "dark"],
] as const)(
  "in Spanish the pane of %i px, %s, cuts nothing and has no fault",
  async (width, colorScheme) => {
    const { page } = workbench;
    await page.emulateMedia({ colorScheme });
    await page.locator("#pane").evaluate((pane, px) => {
      pane.style.cssText = `flex: none; width: ${px}px`;
    }, width);
    await page.getByRole("tab", { name: TABS[0] }).click();
    await page.getByRole("button", { name: "Revisar", exact: true }).click();
    await page.getByRole("heading", { name: /^Hallazgos: \d+/ }).waitFor();
    await page.evaluate(axe.source);
    for (const name of TABS) {
      await page.getByRole("tab", { name }).click();
      const { violations } = await page.evaluate(() =>
        (globalThis as unknown as { axe: typeof axe }).axe.run("#pane"),
      );
      expect(violations.map(({ id, nodes }) => [name, id, nodes[0]?.html])).toEqual([]);
      const cut = await page.locator("#pane").evaluate((pane) => {
        const edge = pane.getBoundingClientRect().right;
        return [...pane.querySelectorAll("button, label, p, li, dt, dd, h2, h3, select, .badge")]
          .filter((part) => part.getBoundingClientRect().right > edge)
          .map((part) => part.textContent);
      });
      expect(cut).toEqual([]);
    }
  },
);
