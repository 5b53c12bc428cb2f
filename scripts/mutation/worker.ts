import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { Script } from "node:vm";
import fc from "fast-check";
import { wordsOfTests, type CollectedTest } from "./in-process";

/*
 * Runs the tests of one folder for one mutant after another, as it is told through its parent's messages:
 * { bundle } once; then { mutant, tests } with the names of the tests that reach it.
 * Answers { covered, times } and then { mutant, noticed }.
 */
interface Told {
  readonly bundle?: string;
  readonly mutant?: string;
  /** Those that reach the mutant, in the order to run them in. */
  readonly tests?: readonly number[];
}

interface Awake {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  mutantCoverage?: {
    static: Record<string, number>;
    perTest: Record<string, Record<string, number>>;
  };
}

/** A property is tried often enough to notice a mutant, with the same values for each of them. */
fc.configureGlobal({ numRuns: 40, seed: 173 });
const LONGEST = 20_000;
const awake: Awake = ((globalThis as Record<string, unknown>)["__stryker__"] = {});
const required = createRequire(`${process.cwd()}/tests/`);
let script: Script;

const within = (run: () => unknown): unknown => {
  (globalThis as Record<string, unknown>)["__run__"] = run;
  return new Script("__run__()").runInThisContext({ timeout: LONGEST });
};

function collected(): CollectedTest[] {
  const { words, tests, before } = wordsOfTests();
  const run = script.runInThisContext() as (...given: unknown[]) => void;
  within(() => run(required, {}, {}, `${process.cwd()}/tests`, ...Object.values(words)));
  for (const first of before) first();
  return tests;
}

async function passes({ run }: CollectedTest): Promise<boolean> {
  try {
    await within(run);
    return true;
  } catch {
    return false;
  }
}

async function dryRun() {
  const tests = collected();
  const times: number[] = [];
  const failed: string[] = [];
  for (const [i, test] of tests.entries()) {
    awake.currentTestId = `t${i}`;
    const start = performance.now();
    if (!(await passes(test))) failed.push(test.name);
    times.push(performance.now() - start);
  }
  awake.currentTestId = undefined;
  process.send!({ coverage: awake.mutantCoverage, times, failed });
}

async function noticed(mutant: string, which: readonly number[]): Promise<boolean> {
  awake.activeMutant = mutant;
  try {
    const tests = collected();
    // A mutant that makes other tests than there were is noticed as well.
    for (const i of which) if (!tests[i] || !(await passes(tests[i]))) return true;
    return false;
  } catch {
    return true;
  } finally {
    awake.activeMutant = undefined;
  }
}

process.on("message", async ({ bundle, mutant, tests }: Told) => {
  if (bundle) {
    const names = Object.keys(wordsOfTests().words).join(", ");
    const head = `(function (require, module, exports, __dirname, ${names}) {`;
    script = new Script(`${head}${readFileSync(bundle, "utf8")}\n})`, { filename: bundle });
    await dryRun();
  } else if (mutant) process.send!({ mutant, noticed: await noticed(mutant, tests!) });
});
