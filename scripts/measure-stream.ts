/*
 * Measures how much memory and time the command line takes for a stream of tests:
 *
 *   npm run measure-stream            1 and 10 million rows
 *   npm run measure-stream -- 200000  another number
 *
 * The rows are made while they are read, so that nothing but the program that is measured holds them.
 */
import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const HEADER =
  "Sample,Date,First reading,Second reading,Cups,Alcohol (oz),Foam (%),Air (%),Low,High\n";
const ROWS_IN_A_PIECE = 5000;

/** Every 50th test foams too much, so that the program has something to say. */
function row(i: number): string {
  const reading = 5.5 + (i % 5) / 4;
  const foam = i % 50 === 0 ? 3 : 1;
  return `S-${i},2026-06-${String(1 + (i % 28)).padStart(2, "0")},${reading},${reading},0,48,${foam},${reading - 0.25},4.5,7.5\n`;
}

async function measure(program: string, rows: number): Promise<void> {
  const start = performance.now();
  const child = spawn(process.execPath, [program, "--json", "-"], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  let lines = 0;
  child.stdout.on("data", (piece: Buffer) => {
    for (const byte of piece) if (byte === 10) lines++;
  });
  let peak = 0;
  const looking = setInterval(() => (peak = Math.max(peak, peakOf(child.pid!))), 100);
  child.stdin.write(HEADER);
  for (let from = 0; from < rows; from += ROWS_IN_A_PIECE) {
    let piece = "";
    for (let i = from; i < Math.min(rows, from + ROWS_IN_A_PIECE); i++) piece += row(i);
    if (!child.stdin.write(piece)) await once(child.stdin, "drain");
  }
  child.stdin.end();
  const [code] = (await once(child, "close")) as [number];
  clearInterval(looking);
  const seconds = (performance.now() - start) / 1000;
  console.log(
    `${rows.toLocaleString("en")} rows: ${Math.round(peak)} MB at most, ${seconds.toFixed(0)} s, ` +
      `${lines.toLocaleString("en")} lines said, exit code ${code}`,
  );
}

/** The most memory that a program has taken so far, in megabytes, as Linux tells it. */
function peakOf(pid: number): number {
  try {
    const told = /VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, "utf8"));
    return Number(told?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}

async function main(): Promise<void> {
  const { buildCommandLine } = await import("../build/command-line.mjs");
  const program = join(mkdtempSync(join(tmpdir(), "stream-")), "fresh-check.mjs");
  await buildCommandLine(program);
  const wanted = process.argv.slice(2).map(Number);
  for (const rows of wanted.length > 0 ? wanted : [1_000_000, 10_000_000])
    await measure(program, rows);
}

void main();
