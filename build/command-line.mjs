/** Puts the command line into one file that Node runs alone: bin/fresh-check.mjs. */
import { build } from "esbuild";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

/** @param {string} outfile Where to put it. */
export function buildCommandLine(outfile) {
  return build({
    absWorkingDir: root,
    entryPoints: ["src/command-line/main.ts"],
    outfile,
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    banner: { js: "#!/usr/bin/env node" },
    logLevel: "warning",
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  await buildCommandLine("bin/fresh-check.mjs");
