import { execFileSync } from "node:child_process";
import { appendFileSync } from "node:fs";
import { cpus, totalmem } from "node:os";

/** The page that keeps what was measured. */
const PAGE = "docs/benchmark.md";

/** Adds a run to the page: when, of which commit, on what kind of machine, and its figures in order. */
export function keepRun(figures: readonly number[]): void {
  const git = (...words: string[]) => execFileSync("git", words, { encoding: "utf8" }).trim();
  const changed = git("status", "--porcelain", "--", "src") === "" ? "" : " and changes";
  const commit = `${git("rev-parse", "--short", "HEAD")}${changed}`;
  const [first] = cpus();
  const gigabytes = Math.round(totalmem() / 2 ** 30);
  const machine = `${cpus().length} × ${first?.model.trim() || process.arch}, ${gigabytes} GB, Node ${process.versions.node}`;
  const shown = figures.map((figure) => (figure < 100 ? figure.toFixed(1) : figure.toFixed(0)));
  const cells = [new Date().toISOString().slice(0, 10), commit, machine, ...shown];
  appendFileSync(PAGE, `| ${cells.join(" | ")} |\n`);
}
