import { readFileSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { say } from "../../src/messages/pane-catalogue";
import { launchBrowser } from "./browser";
import { serveDist } from "./dist-server";
import { WorkbenchPage } from "./workbench-page";

/* A finding is decided as a person does it, and the line about it is in the saved file. */

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
  await press("pane-check");
  await findings().first().waitFor();
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
});

const press = (label: "pane-check" | "review-accept" | "review-record") =>
  page.getByRole("button", { name: say(label), exact: true }).click();
const findings = () => page.locator("#fresh-findings .list-item");
const counted = (kind: "open" | "accepted" | "corrected") =>
  page
    .getByRole("group", { name: say("review-filter") })
    .getByRole("button", { name: new RegExp(say(`word-${kind}`)) });

test("nothing is recorded without initials, and that is said", async () => {
  await findings().filter({ hasText: "S-09" }).first().click();
  await page.getByLabel(say("review-reason")).fill("=the ticket is right");
  await press("review-accept");
  await page.getByText(say("review-initials-missing")).waitFor();
});

test("with them it is, and the finding says whose decision it is", async () => {
  await page.getByLabel(say("review-initials")).fill("K.R.");
  await press("review-accept");
  await page.getByText(/K\.R\., \d{4}-.*: =the ticket is right/).waitFor();
  expect(await counted("accepted").innerText()).toMatch(/1$/);
});

test("a correction in the cell is noticed, and recorded on a click", async () => {
  // S-06: 6.5 less 0.6 for 4 pt, to the nearest 0.25, is 6.
  await findings().filter({ hasText: "S-06" }).first().click();
  await page.evaluate(() =>
    globalThis.univer.getActiveWorkbook()!.getActiveSheet().getRange("N7").setValue(6),
  );
  await press("pane-check");
  await page.getByText(/S-06.*it was 6\.5, it is 6/).waitFor();
  await press("review-record");
  await page.getByText(say("review-recorded", { count: 1, sheet: "Fresh review" })).waitFor();
  expect(await counted("corrected").innerText()).toMatch(/1$/);
});

test("the report prints the decisions", async () => {
  await page.locator("#fresh-report-tab").click();
  const said = await page.locator(".report").innerText();
  expect(said).toMatch(/K\.R\., .*: =the ticket is right/);
  expect(said).toMatch(/it was 6\.5, it is 6/);
});

let saved = "";

test("the saved file holds the review, each text as it was typed", async () => {
  saved = await save();
  expect(await linesIn(saved)).toEqual([
    ["S-09", "accepted", "=the ticket is right", "K.R."],
    ["S-06", "corrected", null, "K.R."],
  ]);
});

test("opened again, the decisions hold, and the next one comes below them", async () => {
  const idOf = () => globalThis.univer.getActiveWorkbook()!.getId();
  const before = await page.evaluate(idOf);
  await page.locator("input[type=file]").setInputFiles({
    name: "reviewed.xlsx",
    mimeType: "application/octet-stream",
    buffer: readFileSync(saved),
  });
  // The file shows the same cells as the sheet before it.
  await page.waitForFunction(
    (old) => globalThis.univer.getActiveWorkbook()!.getId() !== old,
    before,
  );
  await workbench.untilShown("A2", "S-01");
  await press("pane-check");
  await findings().first().waitFor();
  expect(await counted("accepted").innerText()).toMatch(/1$/);
  expect(await counted("corrected").innerText()).toMatch(/1$/);
  await findings().filter({ hasText: "S-07" }).first().click();
  await page.getByLabel(say("review-initials")).fill("T.M.");
  await page.getByRole("button", { name: say("review-leave-open"), exact: true }).click();
  await page.getByText(say("review-recorded", { count: 1, sheet: "Fresh review" })).waitFor();
  expect(await linesIn(await save())).toEqual([
    ["S-09", "accepted", "=the ticket is right", "K.R."],
    ["S-06", "corrected", null, "K.R."],
    ["S-07", "open", null, "T.M."],
  ]);
});

test("all open findings of a rule are decided at once, and the next one alone again", async () => {
  const meant = page.locator(".review-form select");
  await findings()
    .filter({ hasText: /on the limit/i })
    .nth(1)
    .click();
  const all = await meant.locator("option").last().innerText();
  const count = Number(/\d+/.exec(all)![0]);
  expect(count).toBeGreaterThan(1);
  await meant.selectOption("all");
  await page.getByLabel(say("review-reason")).fill("readings taken twice");
  await press("review-accept");
  await page.getByText(say("review-recorded", { count, sheet: "Fresh review" })).waitFor();
  expect(await counted("accepted").innerText()).toMatch(new RegExp(`${count + 1}$`));
  await findings().filter({ hasText: "S-07" }).first().click();
  expect(await meant.inputValue()).toBe("one");
});

test("the browser has no complaint", () => {
  expect(workbench.traffic.complaints).toEqual([]);
});

async function save(): Promise<string> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as XLSX" }).click();
  return (await download).path();
}

/** Sample, decision, reason and initials of each line of the review in a file. */
async function linesIn(path: string): Promise<unknown[][]> {
  const { sheets } = await readWorkbook(readFileSync(path));
  const [headings, ...lines] = sheets.find(({ name }) => name === "Fresh review")!.rows;
  const columns = headings!.map(String);
  const wanted = ["sample", "decision", "reason", "initials"];
  return lines.map((cells) => wanted.map((name) => cells[columns.indexOf(name)]));
}
