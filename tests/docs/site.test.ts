import { existsSync, readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { docsPages, PAGES, PAGES_IN_SPANISH } from "../../build/site/docs-pages.mjs";
import { RULES } from "../../src/fieldsheet/rules";

const pages = new Map(Object.entries(docsPages("docs", "1.0.0, 2026-06-10")));
const anchorsIn = (html: string) => [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id!);
const linksIn = (html: string) =>
  [...html.matchAll(/(?:href|src)="([^"]+)"/g)]
    .map(([, link]) => link!)
    .filter((link) => !/^https?:/.test(link));

test("every page in docs/ is on the site", () => {
  const written = readdirSync("docs").filter((name) => name.endsWith(".md"));
  const named = [...PAGES, ...PAGES_IN_SPANISH].map(([name]) => `${name}.md`);
  expect(named.sort()).toEqual(written.sort());
});

describe.each([...pages])("%s", (name, html) => {
  test("has one heading of its own and no anchor twice", () => {
    expect(html.match(/<h1 /g)).toHaveLength(1);
    const anchors = anchorsIn(html);
    expect(new Set(anchors).size).toBe(anchors.length);
  });

  test("leads to what is there", () => {
    const dead = linksIn(html).filter((link) => {
      const [file, anchor] = link.split("#");
      const target = file ? posix.join("docs", file) : name;
      const page = pages.get(target);
      if (!page) return !existsSync(`dist/${target}`);
      return anchor !== undefined && !anchorsIn(page).includes(anchor);
    });
    expect(dead).toEqual([]);
  });
});

test.each(RULES.map(({ id }) => id))("the rule %s has a section", (id) => {
  expect(anchorsIn(pages.get("docs/rules.html")!)).toContain(id);
});

const declaredIn = (file: string) =>
  (
    JSON.parse(readFileSync(`dist/${file}`, "utf8")) as {
      functions: { name: string; helpUrl: string }[];
    }
  ).functions;

test.each([...declaredIn("functions.json"), ...declaredIn("functions-es.json")])(
  "the help of $name leads to its section",
  ({ name, helpUrl }) => {
    const { origin, pathname, hash } = new URL(helpUrl);
    expect(origin).toBe("https://localhost:3000");
    const html = readFileSync(`dist${pathname}`, "utf8");
    const heading = new RegExp(
      `<h[23] id="${hash.slice(1)}">FRESH\\.${name.replaceAll(".", "\\.")}</h[23]>`,
    );
    expect(html).toMatch(heading);
  },
);
