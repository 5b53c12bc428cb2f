import axe from "axe-core";
import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { cautionMessages } from "../../src/messages/english/cautions";
import { OpenedPackage } from "../../src/files/package/opened-package";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { say } from "../../src/messages/pane-catalogue";
import { launchBrowser } from "./browser";
import { serveDist } from "./dist-server";
import { WorkbenchPage } from "./workbench-page";

jest.setTimeout(120_000);
// A machine that is busy for a moment is no fault of the page; the first failure is printed.
jest.retryTimes(1, { logErrorsBeforeRetry: true });

let server: Awaited<ReturnType<typeof serveDist>>;
let browser: Browser;
let workbench: WorkbenchPage;
let page: Page;

beforeAll(async () => {
  server = await serveDist();
  browser = await launchBrowser();
  workbench = await WorkbenchPage.open(browser, server.origin);
  page = workbench.page;
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
const goTo = (name: string) =>
  page
    .getByRole("tablist", { name: say("pane-pages") })
    .getByRole("tab", { name })
    .click();
const findings = () => page.getByRole("listbox", { name: "Findings" });
const said = (sentence: string | RegExp) =>
  page.locator("#pane").getByRole("status").filter({ hasText: sentence }).waitFor();
const alerted = (sentence: string) =>
  page.getByRole("alert").filter({ hasText: sentence }).waitFor();

/** Brings the first cells into sight, so that they can be clicked. */
const toTop = () =>
  page.evaluate(() => {
    globalThis.univer.getActiveWorkbook()!.getActiveSheet().scrollToCell(0, 0);
  });

/** The selected cell, our conditional formats and the notes, as the spreadsheet has them. */
const sheetState = () =>
  page.evaluate(() => {
    const sheet = globalThis.univer.getActiveWorkbook()!.getActiveSheet();
    return {
      selected: sheet.getActiveRange()!.getA1Notation(),
      rules: sheet.getConditionalFormattingRules().length,
      notes: sheet.getNotes().length,
    };
  });

test("a check lists what is wrong, and a click on a finding goes to its cell", async () => {
  await workbench.click("B3");
  await press("Check");
  await said(/^Checked: Loads!A1:R\d+\. Tests: \d+\./);
  const foam = page.getByRole("option").filter({ hasText: "S-07" }).filter({ hasText: "foam" });
  expect(await foam.textContent()).toMatch(/^Row 8, S-07: Void Void K8 .*3 divisions of foam/);
  await foam.click();
  await page.waitForFunction(
    () =>
      globalThis.univer.getActiveWorkbook()!.getActiveSheet().getActiveRange()!.getA1Notation() ===
      "K8",
  );
});

test("findings are filtered by weight", async () => {
  const all = Number(await findings().getByRole("option").first().getAttribute("aria-setsize"));
  const filter = page.getByRole("button", { name: /^Void \d+$/ });
  const voids = Number((await filter.textContent())!.replace(/\D/g, ""));
  await filter.click();
  expect(await filter.getAttribute("aria-pressed")).toBe("false");
  const left = Number(await findings().getByRole("option").first().getAttribute("aria-setsize"));
  expect(left).toBe(all - voids);
  expect(await findings().getByText("Void", { exact: true }).count()).toBe(0);
  await filter.click();
});

test("columns are shown with what they are taken for and why; another choice is checked and kept", async () => {
  await page.getByText(/^Columns: \d+ recognised/).click();
  const line = page.getByRole("listitem").filter({ hasText: "Alcohol (oz)" });
  expect(await line.textContent()).toMatch(/^JAlcohol \(oz\)Sure.*Read as alcohol because/);
  const taken = page.getByLabel("What “Remarks” is taken for");
  await taken.focus();
  await taken.selectOption({ label: "Not ours" });
  await said(/^Checked: /);
  await press("Keep in the workbook");
  await said("Kept on the sheet “Fresh setup”: 1.");
  const kept = await page.evaluate(() => {
    const sheet = univer.getActiveWorkbook()!.getSheetByName("Fresh setup")!;
    return [0, 1].map((column) => sheet.getRange(2, column).getValue());
  });
  expect(kept).toEqual(["Remarks", "Not ours"]);
  await page.evaluate(() => {
    const workbook = univer.getActiveWorkbook()!;
    workbook.deleteSheet(workbook.getSheetByName("Fresh setup")!);
  });
  await press("Check");
  await said(/“Fresh setup” is not in the workbook any more/);
});

test("marking twice marks once, and removing takes every mark away", async () => {
  const before = await sheetState();
  expect(before).toMatchObject({ rules: 0, notes: 0 });
  const marking = page.getByRole("checkbox", { name: "Mark what is found" });
  await marking.check();
  await said(/^Marked cells: \d+/);
  const marked = await sheetState();
  expect(marked.rules).toBeGreaterThan(0);
  expect(marked.rules).toBeLessThanOrEqual(4);
  expect(marked.notes).toBeGreaterThan(0);
  await press("Check");
  await said(/^Checked: .* Marked cells: \d+/);
  expect(await sheetState()).toEqual(marked);
  await marking.uncheck();
  await press("Remove marks");
  await said(/^Marks removed: \d+/);
  expect(await sheetState()).toEqual(before);
});

test("the keyboard alone checks, moves through the findings and goes to a cell", async () => {
  await page.getByRole("button", { name: "Check", exact: true }).focus();
  await page.keyboard.press("Enter");
  await said(/^Checked: /);
  const inTheList = () => findings().evaluate((list) => list === document.activeElement);
  // Marking, removing, what was not checked, seven filters, two choices, and the list.
  for (let i = 0; i < 13 && !(await inTheList()); i++) await page.keyboard.press("Tab");
  expect(await inTheList()).toBe(true);
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowDown");
  const active = findings().getByRole("option", { selected: true });
  expect(await active.getAttribute("aria-posinset")).toBe("2");
  const cell = /\b[A-Z]+\d+\b/.exec((await active.textContent())!)![0];
  await page.keyboard.press("Enter");
  await page.waitForFunction(
    (address) =>
      globalThis.univer.getActiveWorkbook()!.getActiveSheet().getActiveRange()!.getA1Notation() ===
      address,
    cell,
  );
  await page.keyboard.press("End");
  const last = findings().getByRole("option", { selected: true });
  expect(await last.getAttribute("aria-posinset")).toBe(await last.getAttribute("aria-setsize"));
});

test("the test under the cursor is shown step by step, and numbers can be tried", async () => {
  await toTop();
  await workbench.click("B6");
  await goTo("This test");
  await page.getByRole("heading", { name: "The test in row 6, S-05" }).waitFor();
  const typed = page.getByRole("textbox", { name: "Final reading, %" });
  await typed.fill("7.75");
  await page.getByRole("textbox", { name: "Alcohol (such as 48 oz)" }).fill("64 oz");
  await page.getByRole("textbox", { name: "Calibrated cups" }).fill("0");
  // Derived from C173 Table 1 (manual, 2019): 7.75 − 0.60 = 7.15, to the nearest 0.25 is 7.25.
  const steps = page.getByRole("table", { name: "Step by step" });
  expect(await steps.getByRole("row").last().getByRole("cell").allTextContents()).toEqual([
    "+0.10",
    "7.25",
  ]);
  expect(await page.getByRole("table", { name: /off by one step/ }).count()).toBe(1);
  await press("Back to the record");
  expect(await typed.inputValue()).not.toBe("7.75");
});

test("what was found in a valid test stands beside its result", async () => {
  await workbench.click("B7");
  await page.getByRole("heading", { name: "The test in row 7, S-06" }).waitFor();
  await page.getByRole("listitem").filter({ hasText: "6.5 % is reported" }).first().waitFor();
});

test("the trend has a picture, the same in words, and a table", async () => {
  await goTo("Trend");
  const picture = page.getByRole("img", { name: /Air content, All tests.*Results: \d+/ });
  await picture.waitFor();
  const value = page.getByRole("slider", { name: "Result in the chart" });
  await value.press("Home");
  // First load of the sample: 5.50 and 5.75 agree, 16 oz subtract nothing (memory: C173 Table 1).
  expect(await value.getAttribute("aria-valuetext")).toMatch(/^S-01 \(1 of \d+\): 5\.75 %/);
  await page.getByRole("combobox", { name: "Tests together" }).selectOption("mix");
  await page.getByRole("img", { name: /Air content, Deck LW-40/ }).waitFor();
  await page.getByText("The numbers as a table").click();
  await page.getByRole("columnheader", { name: "Signals" }).waitFor();
  const picture1200 = page.waitForEvent("download");
  await press("Save as a picture");
  const png = readFileSync(await (await picture1200).path());
  // The width stands in bytes 16 to 19 of a PNG (W3C PNG specification, 11.2.1).
  expect(png.readUInt32BE(16)).toBeGreaterThanOrEqual(1200);
  const drawing = page.waitForEvent("download");
  await press("Save as a drawing (SVG)");
  const svg = readFileSync(await (await drawing).path(), "utf8");
  for (const words of ["Air content, %", "Tests in the order of the sheet", "Control limits"])
    expect(svg).toContain(words);
});

test("who differs is drawn, read off with the keyboard, and stands in a table", async () => {
  const section = page.getByRole("region", { name: say("bias-heading") });
  await section.getByRole("img").locator("svg").waitFor();
  const slider = section.getByRole("slider");
  await slider.focus();
  await page.keyboard.press("ArrowDown");
  expect(await slider.innerText()).toMatch(/^A\. Brinnock: [+−±][\d.]+ %, standard error/);
  await page.keyboard.press("End");
  expect(await slider.getAttribute("aria-valuetext")).toMatch(/^T\. Ostrander: /);
  expect(await section.getByRole("row").count()).toBe(3);
});

test("the trend can be of a column that is selected, against limits that are typed", async () => {
  await page.evaluate(() => {
    globalThis.univer.getActiveWorkbook()!.getActiveSheet().getRange("G1:G20").activate();
  });
  await press("Take the selected column");
  await page.getByRole("img", { name: /Air content, All tests, Loads!G1:G20/ }).waitFor();
  await page.getByLabel("High limit, %").filter({ visible: true }).fill("6.5");
  await page.getByRole("img", { name: /Specification: at most 6.50 %/ }).waitFor();
  await page.getByLabel("High limit, %").filter({ visible: true }).fill("");
  await press("Take the checked table");
  await page.getByRole("img", { name: /Air content, .*Loads!A1:R\d+/ }).waitFor();
});

test("the report for print holds findings, method, cautions and nothing else of the page", async () => {
  await goTo("Report");
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  const visible = await page
    .locator("body > :visible")
    .evaluateAll((all) => all.map(({ className }) => className));
  const paper = await page.locator(".fresh-paper").textContent();
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: null });
  expect(visible).toEqual(["fresh-paper"]);
  expect(paper).toContain("3 divisions of foam");
  expect(paper).toContain(say("report-method-text"));
  for (const caution of Object.values(cautionMessages)) expect(paper).toContain(caution);
  expect(await page.locator(".fresh-paper").count()).toBe(0);
});

test("the report is of the tests that are chosen, with the head as typed, and kept as a file", async () => {
  await goTo("Report");
  await page.getByLabel("Project").fill("=Kestrel viaduct");
  await page.getByRole("combobox", { name: "Tests" }).selectOption("The day 2026-06-09");
  const report = page.getByRole("article");
  await report.getByText("Of the tests of 2026-06-09.").waitFor();
  expect(await report.locator("dd").nth(1).textContent()).toBe("=Kestrel viaduct");
  const saved = async (name: string) => {
    const download = page.waitForEvent("download");
    await press(name);
    const file = await download;
    return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
  };
  const csv = await saved("Save as .csv");
  expect(csv.name).toBe("Report of day-of-tests.csv");
  expect(csv.bytes.toString()).toContain("\r\nProject,,'=Kestrel viaduct\r\n");
  const xlsx = await saved("Save as .xlsx");
  expect(xlsx.name).toBe("Report of day-of-tests.xlsx");
  expect((await readWorkbook(xlsx.bytes)).sheets[0]!.rows.flat()).toContain("=Kestrel viaduct");
  // The picture of the trend: a PNG file (RFC 2083) as wide as it is drawn on paper, twice as fine.
  const image = Buffer.from(await new OpenedPackage(xlsx.bytes).content("xl/media/image1.png"));
  expect(image.subarray(1, 4).toString()).toBe("PNG");
  expect(image.readUInt32BE(16)).toBe(1440);
  await page.getByRole("combobox", { name: "Tests" }).selectOption("The test under the cursor");
  await report.getByText(/^Of one test/).waitFor();
  await page.getByRole("combobox", { name: "Tests" }).selectOption("All that were checked");
});

test.each(["light", "dark"] as const)("axe finds no fault in the %s page", async (colorScheme) => {
  await page.emulateMedia({ colorScheme });
  await page.evaluate(axe.source);
  for (const name of ["Check", "This test", "Trend", "Report"]) {
    await goTo(name);
    const faults = await page.evaluate(async () => {
      // The whole page, the spreadsheet as it was mended from outside included.
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
      return violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)]);
    });
    expect([name, faults]).toEqual([name, []]);
  }
  await page.emulateMedia({ colorScheme: null });
});

test("an edit is checked again by itself once that is switched on", async () => {
  await goTo("Check");
  const live = page.getByRole("switch", { name: "Check again after every edit" });
  await live.check();
  await findings().press("Home");
  await toTop();
  await workbench.type("G3", "about 6");
  await page
    .getByRole("option")
    .filter({ hasText: "G3 New Second reading (%): “about 6” is not a number" })
    .waitFor();
  await live.uncheck();
});

test("a results sheet is written beside the others", async () => {
  await press("Write a results sheet");
  await said("The results are on the sheet “Findings”");
  expect(await workbench.shown("C1")).toBe("rule");
});

test.each([
  ["an empty cell far from any table", "J20", say("selection-empty")],
  ["cells of a sheet that is no table of tests", "A1", say("no-header-row")],
])("%s: one sentence says what to do", async (_, cell, sentence) => {
  await press("Start with an empty sheet");
  if (cell === "A1") await workbench.type("A1", "Nothing to see");
  await workbench.click(cell);
  await press("Check");
  await alerted(sentence);
});

test("text from cells stays text", async () => {
  await page.locator("#file").setInputFiles({
    name: "markup.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(
      'Sample,First reading,Second reading,Alcohol (oz),<b>Foam</b>\n"<img src=x>",<i>6</i>,6,16,3\n',
    ),
  });
  await workbench.untilShown("A2", "<img src=x>");
  await page.evaluate(() =>
    globalThis.univer.getActiveWorkbook()!.getActiveSheet().getRange("A:E").activate(),
  );
  await page.getByText("Check other cells").click();
  await press("Check the selected cells");
  // Whole columns are cut to the rows in use.
  await said("A1:E2. Tests: 1.");
  await page.getByRole("option").filter({ hasText: "“<i>6</i>” is not a number" }).waitFor();
  expect(await page.locator("#pane img, #pane i, #pane td b").count()).toBe(0);
});

test("limits that the sheet does not hold can be given", async () => {
  const high = page.getByRole("textbox", { name: "High limit, %" });
  await high.fill("five");
  await press("Compare");
  await alerted("High limit, %: “five” is not a number");
  await high.fill("5.5");
  await workbench.type("B2", "6");
  await workbench.type("E2", "1");
  await press("Compare");
  await page.getByRole("option").filter({ hasText: "above the high limit of 5.5 %" }).waitFor();
});

test("the browser has no complaint, and nothing was sent or fetched from elsewhere", () => {
  const { requests, complaints } = workbench.traffic;
  expect(complaints).toEqual([]);
  expect(
    requests.filter((url) => !url.startsWith(server.origin) && !/^(blob|data):/.test(url)),
  ).toEqual([]);
});

describe("the pane of the add-in", () => {
  async function openTaskpane(officeLibrary: string | undefined) {
    const complaints: string[] = [];
    const taskpane = await browser.newPage({ viewport: { width: 350, height: 700 } });
    taskpane.on("pageerror", ({ message }) => complaints.push(message));
    taskpane.on("console", (message) => {
      if (/Content Security Policy/i.test(message.text())) complaints.push(message.text());
    });
    // Excel brings this along before any script of ours.
    await taskpane.addInitScript(
      "globalThis.registered = []; globalThis.CustomFunctions = { associate: (id) => registered.push(id) };",
    );
    await taskpane.route("https://appsforoffice.microsoft.com/**", (route) =>
      officeLibrary === undefined
        ? route.abort()
        : route.fulfill({ contentType: "text/javascript", body: officeLibrary }),
    );
    await taskpane.goto(`${server.origin}/taskpane.html`);
    return { taskpane, complaints };
  }

  test("says where to open it when it is opened outside Excel", async () => {
    const { taskpane, complaints } = await openTaskpane(undefined);
    await taskpane.getByText(say("pane-open-in-excel")).waitFor();
    expect(complaints).toEqual([]);
    await taskpane.close();
  });

  test("registers every function, once, since Excel runs them in this page", async () => {
    const { taskpane } = await openTaskpane(undefined);
    await taskpane.getByText(say("pane-open-in-excel")).waitFor();
    const { functions } = JSON.parse(readFileSync("dist/functions.json", "utf8")) as {
      functions: { id: string }[];
    };
    const registered = await taskpane.evaluate<string[]>("registered");
    expect(registered.sort()).toEqual(functions.map(({ id }) => id).sort());
    await taskpane.close();
  });

  test("opens under its strict content policy, fits 350 px, and fails in a sentence of ours", async () => {
    const stub = `window.Office = { HostType: { Excel: "Excel" }, onReady: (then) => then({ host: "Excel" }) };`;
    const { taskpane, complaints } = await openTaskpane(stub);
    const alert = taskpane.getByRole("alert");
    for (const name of ["This test", "Trend", "Report", "Check"])
      await taskpane.getByRole("tab", { name, exact: true }).click();
    await taskpane.getByRole("button", { name: "Check", exact: true }).click();
    // There is no Excel behind this stub, so every call fails; what is said must still be ours.
    await alert.filter({ hasText: /\S/ }).waitFor();
    expect(await alert.textContent()).not.toMatch(/undefined|is not defined|Error/);
    const width = await taskpane.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(350);
    expect(complaints).toEqual([]);
    await taskpane.close();
  });
});
