import type { FUniver } from "@univerjs/core/facade";
import type {} from "@univerjs/preset-sheets-core";
import type { Browser, ConsoleMessage, Page } from "playwright-core";

declare global {
  /** The spreadsheet of the workbench, as the page offers it. */
  var univer: FUniver;
}

/** The cells are one picture; where each of them is, the spreadsheet tells. */
const CELLS = "canvas[id^='univer-sheet-main-canvas']";
/** The letters that were typed, in the names of the functions that are offered. */
const OFFERED = "li span.univer-text-red-500";
const TAB_PICTURE = "/assets/icon-32.png";
const LONGEST_WAIT = 20_000;

/** What the browser asked for and complained about since the page was opened. */
export interface Traffic {
  readonly requests: string[];
  readonly complaints: string[];
}

/** The workbench in a browser: cells are typed into by hand and read through the spreadsheet. */
export class WorkbenchPage {
  /** What is answered when the workbench asks whether changes may be lost. */
  losesChanges = true;

  private constructor(
    readonly page: Page,
    readonly traffic: Traffic,
  ) {}

  static async open(browser: Browser, origin: string): Promise<WorkbenchPage> {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    page.setDefaultTimeout(LONGEST_WAIT);
    const traffic: Traffic = { requests: [], complaints: [] };
    page.on("request", (request) => {
      // The picture for the tab comes late or, in a browser without tabs, never.
      if (!request.url().endsWith(TAB_PICTURE)) traffic.requests.push(request.url());
    });
    page.on("pageerror", (error) => traffic.complaints.push(error.message));
    page.on("console", (message: ConsoleMessage) => {
      if (["error", "warning"].includes(message.type())) traffic.complaints.push(message.text());
    });
    await page.goto(`${origin}/workbench.html`);
    await page.locator(CELLS).waitFor();
    const workbench = new WorkbenchPage(page, traffic);
    page.on("dialog", (dialog) => (workbench.losesChanges ? dialog.accept() : dialog.dismiss()));
    return workbench;
  }

  /** Types into a cell of the sheet that is shown, as a person does, and presses Enter. */
  async type(cell: string, text: string): Promise<void> {
    await this.click(cell);
    await this.page.keyboard.type(text);
    // Enter would take one of the functions that are offered for what was typed a moment ago.
    await this.page.locator(OFFERED).first().waitFor({ state: "hidden" });
    await this.page.keyboard.press("Enter");
  }

  async click(cell: string): Promise<void> {
    const position = await this.page.evaluate((address) => {
      const sheet = globalThis.univer.getActiveWorkbook()!.getActiveSheet();
      const { x, y, width, height } = sheet.getRange(address).getCellRect();
      return { x: x + width / 2, y: y + height / 2 };
    }, cell);
    await this.page.locator(CELLS).click({ position });
  }

  /** What a cell of the sheet that is shown displays. */
  shown(cell: string): Promise<string> {
    return this.page.evaluate(
      (address) =>
        globalThis.univer.getActiveWorkbook()!.getActiveSheet().getRange(address).getDisplayValue(),
      cell,
    );
  }

  /** Waits until a cell displays something, for a calculation to end. */
  async untilShown(cell: string, text: string): Promise<void> {
    await this.page.waitForFunction(
      ([address, wanted]) =>
        globalThis.univer
          .getActiveWorkbook()!
          .getActiveSheet()
          .getRange(address!)
          .getDisplayValue() === wanted,
      [cell, text],
    );
  }

  /** Waits for the sentence under the sheet about the selected cell. */
  async untilSaid(sentence: string | RegExp): Promise<void> {
    await this.page.getByRole("status").filter({ hasText: sentence }).first().waitFor();
  }
}
