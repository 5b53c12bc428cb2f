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
/** How long a cell is given to take what was typed into it. */
const TIME_TO_TAKE = 4_000;

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

  /**
   * Types into a cell of the sheet that is shown, as a person does, and presses Enter. On a machine
   * that is busy the spreadsheet may still be offering functions when Enter comes, and takes it for
   * an answer: a person would see it and type again, and so is done here.
   */
  async type(cell: string, text: string): Promise<void> {
    for (let again = 2; ; again--) {
      await this.click(cell);
      await this.page.keyboard.type(text);
      // Enter would take one of the functions that are offered for what was typed a moment ago.
      await this.page.locator(OFFERED).first().waitFor({ state: "hidden" });
      await this.page.keyboard.press("Enter");
      if (await this.holds(cell, text)) return;
      if (again === 0) throw new Error(`${cell} did not take “${text}”`);
      await this.page.keyboard.press("Escape");
      await this.page.keyboard.press("Escape");
    }
  }

  /** Whether a cell comes to hold what was typed, and the spreadsheet has left its editor. */
  private async holds(cell: string, text: string): Promise<boolean> {
    const taken = this.page.waitForFunction(
      ([address, typed]) => {
        const workbook = globalThis.univer.getActiveWorkbook()!;
        const range = workbook.getActiveSheet().getRange(address!);
        const held = range.getFormula() || String(range.getValue() ?? "");
        return (held === typed || Number(held) === Number(typed)) && !workbook.isCellEditing();
      },
      [cell, text],
      { timeout: TIME_TO_TAKE },
    );
    return taken.then(
      () => true,
      () => false,
    );
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
