import { readFileSync } from "node:fs";

test("nothing that is installed may run a script while it is installed", () => {
  // npm's documentation of ignore-scripts: no script of a package is run on install. That every other
  // test passes then shows that none is needed.
  expect(readFileSync(".npmrc", "utf8")).toMatch(/^ignore-scripts=true$/m);
});
