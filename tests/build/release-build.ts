import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Builds the files of a release, for any host, into a new folder. @returns The folder. */
export function buildRelease(): string {
  const folder = mkdtempSync(join(tmpdir(), "release-"));
  execFileSync(
    process.execPath,
    [
      "node_modules/webpack/bin/webpack.js",
      ...["--config", "build/webpack.config.mjs", "--mode", "production"],
      ...["--output-path", folder, "--env", "anywhere"],
    ],
    { encoding: "utf8" },
  );
  return folder;
}
