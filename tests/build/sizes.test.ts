import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";

/**
 * The most that a file of the build may weigh when it is sent, in kB. Where a change needs more, raise
 * the number in the commit that needs it, and say there what the reader gets for the wait.
 */
const MOST: Readonly<Record<string, number>> = {
  "functions.js": 150,
  "functions.json": 10,
  "spanish.js": 33,
  // The functions are in it.
  "taskpane.js": 219,
  "taskpane.css": 5,
  "workbench.js": 1779,
  "workbench.css": 20,
  "start-page.js": 4,
  "from-elsewhere.js": 1,
};

test.each(Object.entries(MOST))("%s weighs at most %i kB", (file, most) => {
  const sent = gzipSync(readFileSync(`dist/${file}`), { level: 9 }).length / 1000;
  expect(sent).toBeLessThanOrEqual(most);
});

test("the build has no script of which the size is not held", () => {
  const pages = ["index", "instalar", "from-elsewhere", "taskpane", "workbench"];
  const scripts = pages.flatMap((page) =>
    [
      ...readFileSync(`dist/${page}.html`, "utf8").matchAll(/(?:src|href)="([\w-]+\.(?:js|css))"/g),
    ].map(([, file]) => file!),
  );
  expect([...new Set(scripts)].filter((file) => !(file in MOST))).toEqual(["start-page.css"]);
});
