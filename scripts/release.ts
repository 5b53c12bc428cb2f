/**
 * Makes the release: `npm run release`.
 *
 *     npm run release -- --origin https://example.org/fresh    with a manifest for that address
 *
 * It writes release/files, ready for any https host, and the same as one archive. The same commit
 * gives the same bytes: the build holds no time but that of the commit, and the archive is packed in
 * a fixed order by a library of fixed version.
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { createHash } from "node:crypto";
import { parseArgs } from "node:util";
import { builtFrom } from "../build/built-from.mjs";
import { archiveOf } from "./archive";

const FOLDER = "release/files";

const { values } = parseArgs({ options: { origin: { type: "string" } } });
const { version, time } = builtFrom();

rmSync("release", { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });
execFileSync(
  process.execPath,
  [
    "node_modules/webpack/bin/webpack.js",
    ...["--config", "build/webpack.config.mjs", "--mode", "production"],
    ...["--output-path", FOLDER],
    ...(values.origin === undefined ? ["--env", "anywhere"] : ["--env", `origin=${values.origin}`]),
  ],
  { stdio: "inherit" },
);
const archive = archiveOf(FOLDER, time);
const file = `release/fresh-concrete-functions-${version}.zip`;
writeFileSync(file, archive);
console.log(`${file}  ${(archive.length / 1e6).toFixed(1)} MB`);
console.log(`sha256 ${createHash("sha256").update(archive).digest("hex")}`);
