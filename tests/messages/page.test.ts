import { readFileSync } from "node:fs";
import { everySentence } from "../../src/messages/pane-catalogue";

const HTML = readFileSync("src/workbench/workbench.html", "utf8");
const plainly = (text: string) =>
  text
    .replace(/<\/?code>/g, "`")
    .replace(/\s+/g, " ")
    .trim();

test("workbench.html holds, until its scripts have come, what they will say in English", () => {
  const texts = [...HTML.matchAll(/<(\w+)[^>]*\sdata-say="([\w-]+)"[^>]*>([^]*?)<\/\1\s*>/g)];
  const labels = [...HTML.matchAll(/aria-label="([^"]*)"\s+data-say-label="([\w-]+)"/g)];
  const held = Object.fromEntries([
    ...texts.map(([, , id, text]) => [id!, plainly(text!)]),
    ...labels.map(([, label, id]) => [id!, label!]),
  ]) as Record<string, string>;
  const said = Object.entries(everySentence).filter(([id]) => id.startsWith("page-"));
  expect(held).toEqual(Object.fromEntries(said));
});

test("no words of workbench.html are left that are said in no other language", () => {
  const words = HTML.replace(/<!--[^]*?-->/g, "")
    .replace(/<(\w+)[^>]*\sdata-say="[\w-]+"[^>]*>[^]*?<\/\1\s*>/g, "")
    .replace(/<[^>]*>/g, "")
    .trim();
  expect(words).toBe("");
});
