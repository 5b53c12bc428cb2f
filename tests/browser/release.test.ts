import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { unzipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { validateXML } from "xmllint-wasm";
import { archiveOf } from "../../scripts/archive";
import { startPageMessages } from "../../src/messages/english/start-page";
import { buildRelease } from "../build/release-build";
import { launchBrowser } from "./browser";
import { serveDist } from "./dist-server";
import { staticHost, type StaticHost } from "./static-host";

// It builds everything once more, which takes long where other work goes on.
jest.setTimeout(240_000);

const FOLDER = "/tools/fresh/";
const MADE = new Date("2026-06-10T23:30:00Z");

let built: string;
let archive: Uint8Array;
let files: ReadonlyMap<string, Uint8Array>;
let browser: Browser;
let elsewhere: Awaited<ReturnType<typeof serveDist>>;
const hosts: StaticHost[] = [];

beforeAll(async () => {
  built = buildRelease();
  archive = archiveOf(built, MADE);
  files = new Map(Object.entries(unzipSync(archive)));
  browser = await launchBrowser();
  elsewhere = await serveDist();
});
afterAll(async () => {
  await browser?.close();
  await elsewhere?.close();
  for (const host of hosts) await host.close();
});

/** Opens a page of the release on a new host. */
async function opened(readsHeaders: boolean, name = "index.html"): Promise<[Page, string]> {
  const host = await staticHost(files, FOLDER, readsHeaders);
  hosts.push(host);
  const context = await browser.newContext({ ignoreHTTPSErrors: true });
  const page = await context.newPage();
  await page.goto(host.origin + FOLDER + name);
  return [page, host.origin + FOLDER.slice(0, -1)];
}

describe("the same commit gives the same bytes", () => {
  const filesOf = (folder: string) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((name) => statSync(join(folder, name)).isFile())
      .sort();

  test("of every file, built twice (the other build is dist; if not, run npm run build)", () => {
    // The manifest and the help of the functions hold an address; a build for any host has none.
    const different = ["functions.json", "functions-es.json", "manifest.xml"];
    const same = (name: string) => !different.includes(name);
    expect(filesOf(built)).toEqual(filesOf("dist").filter((name) => name !== "manifest.xml"));
    const changed = filesOf(built)
      .filter(same)
      .filter((name) => !readFileSync(join(built, name)).equals(readFileSync(join("dist", name))));
    expect(changed).toEqual([]);
  });

  // Time and date of the first entry as APPNOTE (PKWARE) 4.4.6 lays them out; the format knows no time
  // zone, so noon of the commit's day stands there whatever the zone of the machine is.
  test("of the archive, which holds the day of the commit and no other time", () => {
    const entry = new DataView(archive.buffer, archive.byteOffset);
    expect(entry.getUint16(10, true)).toBe(12 << 11);
    expect(entry.getUint16(12, true)).toBe(((2026 - 1980) << 9) | (6 << 5) | 10);
  });
});

test("holds pages, workbench, samples, documents, licences and the settings of hosts", () => {
  expect([...files.keys()]).toEqual(
    expect.arrayContaining([
      ...["index.html", "taskpane.html", "workbench.html", "functions.js", "functions.json"],
      ...["samples/day-of-tests.xlsx", "docs/index.html", "docs/functions.html", "licences.txt"],
      ...["_headers", ".htaccess", "web.config", "staticwebapp.config.json", "headers-nginx.conf"],
    ]),
  );
});

describe("on a host that reads the headers among the files", () => {
  let page: Page;
  let address: string;
  beforeAll(async () => {
    [page, address] = await opened(true);
  });

  test("the page finds that the host is ready", async () => {
    await page.getByText(startPageMessages["host-is-ready"]).waitFor();
    expect(await page.getByText(startPageMessages["is-missing"], { exact: true }).count()).toBe(0);
  });

  test("it makes the manifest for its own address", async () => {
    const waiting = page.waitForEvent("download");
    await page.getByText("Download the manifest").click();
    const download = await waiting;
    expect(download.suggestedFilename()).toBe("fresh-concrete-functions.xml");
    const manifest = readFileSync(await download.path(), "utf8");
    const urls = [...manifest.matchAll(/DefaultValue="(https:[^"]*)"/g)].map(([, url]) => url!);
    expect(urls).toHaveLength(10);
    for (const url of urls) expect(files.has(url.replace(`${address}/`, ""))).toBe(true);
    expect(manifest).toContain(`<AppDomain>${new URL(address).origin}</AppDomain>`);
    expect((await validateXML({ xml: manifest, normalization: "format" })).errors).toEqual([]);
  });

  test("it shows four ways to add it, with the number of clicks", async () => {
    const ways = page.locator(".ways section");
    expect(await ways.count()).toBe(4);
    for (const way of await ways.allTextContents()) expect(way).toMatch(/\d+ clicks/);
  });

  test("a page of another site reads functions.json and shows an icon, as Excel does", async () => {
    const context = await browser.newContext({ ignoreHTTPSErrors: true });
    const other = await context.newPage();
    // A page without a policy of its own, at another origin.
    await other.goto(`${elsewhere.origin}/functions.json`);
    const found = await other.evaluate(async (at) => {
      const { functions } = await (await fetch(`${at}/functions.json`)).json();
      const icon = await new Promise((resolve) => {
        const picture = new Image();
        picture.onload = () => resolve(picture.width);
        picture.onerror = () => resolve("refused");
        picture.src = `${at}/assets/icon-32.png`;
      });
      return { functions: functions.length, icon };
    }, address);
    const { functions } = JSON.parse(readFileSync("dist/functions.json", "utf8"));
    expect(found).toEqual({ functions: functions.length, icon: 32 });
    await context.close();
  });

  test("the workbench runs from the folder", async () => {
    await page.goto(`${address}/workbench.html`);
    await page.getByRole("button", { name: "Check", exact: true }).waitFor();
  });
});

test("on a host that sends no headers the page says what is missing and how to mend it", async () => {
  const [page] = await opened(false);
  await page.getByText(startPageMessages["host-lacks"]({ missing: "1" })).waitFor();
  const { what, mend } = startPageMessages["need-functions-for-others"];
  await page.getByText(`${what} ${mend}`).waitFor();
});

test("without https the page makes no manifest, and says why", async () => {
  const page = await browser.newPage();
  await page.goto(`${elsewhere.origin}/index.html`);
  await page.getByText(startPageMessages["manifest-needs-https"]).waitFor();
  expect(await page.getByText("Download the manifest").count()).toBe(0);
  await page.close();
});
