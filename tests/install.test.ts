import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { installSteps } from "../scripts/install-steps";

const page = readFileSync("docs/install.md", "utf8").replaceAll("\r\n", "\n");
const ways = page.split(/^## /m).filter((section) => /should now see/.test(section));

test("there are four ways to install", () => {
  expect(ways.map((way) => way.split("\n")[0])).toEqual([
    "Excel on the web",
    "Excel on Windows, from a shared folder",
    "Excel on a Mac, from a folder",
    "A whole organisation",
  ]);
});

test.each(ways.map((way) => [way.split("\n")[0], way]))("%s takes at most six steps", (_, way) => {
  const steps = [...way!.matchAll(/^(\d)\. /gm)].map((match) => Number(match[1]));
  expect(steps).toEqual(steps.map((_, i) => i + 1));
  expect(steps.length).toBeGreaterThan(0);
  expect(steps.length).toBeLessThanOrEqual(6);
});

test.each(ways.map((way) => [way.split("\n")[0], way]))(
  "%s: the clicks that are counted are those that are told",
  (_, way) => {
    const steps = way!.slice(way!.indexOf("\n1. "), way!.search(/\*\*\w+ should now see/));
    const bold = steps.match(/\*\*[^*]+\*\*/g) ?? [];
    expect(/^(\d+) clicks/m.exec(way!)?.[1]).toBe(String(bold.length));
  },
);

test("says plainly that nobody tried it, and what to do about #NAME?", () => {
  expect(page).toMatch(/Nobody who made this add-in had Excel at hand/);
  expect(page).toMatch(/^## When a cell shows `#NAME\?` or `#BUSY!`$/m);
  expect(page).toMatch(/Press the button "Check field tests" once/);
});

test("the button has the name that the manifest gives it", () => {
  const label = /id="Button.Label" DefaultValue="([^"]+)"/.exec(
    readFileSync("manifest.xml", "utf8"),
  );
  for (const way of ways) expect(way).toContain(`"${label![1]}"`);
});

test.each([
  ["win32", /^Excel on Windows/],
  ["darwin", /^Excel on a Mac/],
  ["linux", /^Excel on the web/],
])("on %s the steps for it are shown, without marks of the page", (platform, start) => {
  const steps = installSteps(platform);
  expect(steps).toMatch(start);
  expect(steps).not.toMatch(/[*`]|^#/m);
});

describe("npm run sideload", () => {
  const run = (...args: string[]) =>
    execFileSync(
      process.execPath,
      ["node_modules/tsx/dist/cli.mjs", "scripts/sideload.ts", ...args],
      {
        encoding: "utf8",
      },
    );

  test("shows where the manifest is, and copies nothing", () => {
    const said = run();
    expect(said).toContain(join(process.cwd(), "manifest.xml"));
    expect(said).not.toContain("copied");
  });

  test("copies the manifest when asked", () => {
    const folder = join(mkdtempSync(join(tmpdir(), "sideload-")), "manifests");
    run("--copy", folder);
    const copy = join(folder, "fresh-concrete-functions.xml");
    expect(existsSync(copy)).toBe(true);
    expect(readFileSync(copy, "utf8")).toBe(readFileSync("manifest.xml", "utf8"));
  });
});
