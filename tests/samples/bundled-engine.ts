import { buildSync } from "esbuild";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/**
 * Loads the workbench's spreadsheet. Some of its packages are modules that the test runner cannot
 * load, so it is first put together into one file.
 */
export function bundledEngine(): typeof import("./workbench-engine") {
  const outfile = join(mkdtempSync(join(tmpdir(), "engine-")), "engine.cjs");
  buildSync({
    entryPoints: [join(__dirname, "workbench-engine.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "cjs",
    logLevel: "error",
    // The preset is made for a page; the classes that the functions need of it are the engine's own.
    alias: { "@univerjs/preset-sheets-core": "@univerjs/engine-formula" },
  });
  return require(outfile) as typeof import("./workbench-engine");
}
