import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));

/**
 * What a build is made from: the version, and the time of the commit, so that a commit always gives
 * the same files. Outside a repository SOURCE_DATE_EPOCH (reproducible-builds.org) gives the time.
 *
 * @returns {{ version: string, time: Date }}
 */
export function builtFrom() {
  const { version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8"));
  return { version, time: new Date(1000 * secondsOfCommit()) };
}

/** The version and day of a build, as they are shown: "1.0.0, 2026-11-25". */
export function versionLine({ version, time } = builtFrom()) {
  return `${version}, ${time.toISOString().slice(0, 10)}`;
}

function secondsOfCommit() {
  if (process.env.SOURCE_DATE_EPOCH) return Number(process.env.SOURCE_DATE_EPOCH);
  try {
    const options = { cwd: root, encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] };
    return Number(execFileSync("git", ["log", "-1", "--format=%ct"], options));
  } catch {
    return 0;
  }
}
