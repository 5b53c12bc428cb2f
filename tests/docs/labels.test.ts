import { readFileSync } from "node:fs";
import { spanish } from "../../src/messages/spanish";
import { everySentence } from "../../src/messages/pane-catalogue";

const inWorkbench = [
  ...readFileSync("src/workbench/workbench.html", "utf8").matchAll(/<button[^>]*>([^<]+)</g),
].map(([, label]) => label!.trim().replace("…", ""));
const onRibbon = /id="Button.Label" DefaultValue="([^"]+)"/.exec(
  readFileSync("manifest.xml", "utf8"),
)![1]!;
const labels = new Set<unknown>([
  ...Object.values(everySentence),
  ...Object.values(spanish).map((said) =>
    typeof said === "string" ? said.replace("…", "") : said,
  ),
  ...[...inWorkbench, onRibbon],
]);

/** What is bold in a sentence of the page and is not a sentence or a heading of its own. */
function pressed(page: string): string[] {
  const text = readFileSync(`docs/${page}.md`, "utf8")
    .replaceAll("\r\n", "\n")
    .replaceAll("\n", " ");
  return [...text.matchAll(/\*\*([^*]+)\*\*/g)].map(([, words]) => words!);
}

test.each([
  ...pressed("ten-minutes").map((label) => ({ page: "ten-minutes", label })),
  ...pressed("diez-minutos").map((label) => ({ page: "diez-minutos", label })),
  ...pressed("first-half-hour")
    .filter((label) => !/[.]$|^Before/.test(label))
    .map((label) => ({ page: "first-half-hour", label })),
])("$page: “$label” is what the pane, the workbench or the ribbon shows", ({ label }) => {
  expect(labels).toContain(label);
});
