import { readFileSync } from "node:fs";
import { openedFile } from "../../src/files/open-file";
import { readWorkbook } from "../../src/files/workbook/read-workbook";
import { Problem } from "../../src/measure/problem";

/** Opens the file that is named and says how it ended, what it took and how long. */
async function open(path: string): Promise<string> {
  try {
    const file = openedFile(path, readFileSync(path), 100_000);
    if (file.kind === "text") return "read";
    await readWorkbook(file.opened);
    return "read";
  } catch (error) {
    return error instanceof Problem ? error.id : String(error);
  }
}

async function tell(): Promise<void> {
  const start = performance.now();
  const ended = await open(process.argv[2]!);
  const seconds = (performance.now() - start) / 1000;
  process.stdout.write(JSON.stringify({ ended, seconds, megabytes: mostMemory() / 1024 }));
}

/**
 * The most memory that this process has held, kB. What resources were used counts on Linux what the process
 * held that started this one too, as often as that is more.
 */
function mostMemory(): number {
  try {
    const held = /VmHWM:\s*(\d+) kB/.exec(readFileSync("/proc/self/status", "utf8"));
    return held ? Number(held[1]) : process.resourceUsage().maxRSS;
  } catch {
    return process.resourceUsage().maxRSS;
  }
}

void tell();
