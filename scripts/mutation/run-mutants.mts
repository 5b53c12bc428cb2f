import { fork, type ChildProcess } from "node:child_process";
import type { Mutant } from "./instrumented.mjs";

interface Reach {
  readonly coverage?: {
    readonly static: Readonly<Record<string, number>>;
    readonly perTest: Readonly<Record<string, Readonly<Record<string, number>>>>;
  };
  readonly times: readonly number[];
  readonly failed: readonly string[];
}

/** The tests that reach a mutant, quickest first; all of them where modules reach it as they load. */
function reachOf({ coverage, times }: Reach) {
  const quickest = times.map((_, i) => i).sort((a, b) => times[a]! - times[b]!);
  return ({ id }: Mutant): readonly number[] => {
    if (coverage?.static[id]) return quickest;
    return quickest.filter((i) => coverage?.perTest[`t${i}`]?.[id]);
  };
}

const answer = <T,>(worker: ChildProcess, told: object): Promise<T | undefined> =>
  new Promise((settle) => {
    const done = (value: T | undefined) => {
      worker.off("message", heard);
      worker.off("exit", gone);
      settle(value);
    };
    const heard = (value: unknown) => done(value as T);
    const gone = () => done(undefined);
    worker.once("message", heard);
    worker.once("exit", gone);
    worker.send(told);
  });

/**
 * Wakes one mutant after another in as many processes as are allowed.
 *
 * @param bundle path of the tests and sources as one text
 * @param worker path of the process that runs them
 * @returns the mutants that no test noticed
 * @throws when a test fails with no mutant awake
 */
export async function runMutants(
  bundle: string,
  worker: string,
  mutants: readonly Mutant[],
  processes: number,
): Promise<readonly Mutant[]> {
  const unnoticed: Mutant[] = [];
  const queue = [...mutants];
  const one = async () => {
    let child = fork(worker);
    let reach = reachOf(await dryRun(child, bundle));
    for (let mutant = queue.shift(); mutant; mutant = queue.shift()) {
      const tests = reach(mutant);
      if (tests.length === 0) {
        unnoticed.push(mutant);
        continue;
      }
      const heard = await answer<{ noticed: boolean }>(child, { mutant: mutant.id, tests });
      if (heard) {
        if (!heard.noticed) unnoticed.push(mutant);
      } else {
        // A mutant that ends the process is noticed; the next needs a new one.
        child = fork(worker);
        reach = reachOf(await dryRun(child, bundle));
      }
      if (queue.length % 100 === 0) console.error(`${queue.length} to go`);
    }
    child.kill();
  };
  await Promise.all(Array.from({ length: processes }, one));
  return unnoticed;
}

async function dryRun(child: ChildProcess, bundle: string): Promise<Reach> {
  const reach = await answer<Reach>(child, { bundle });
  if (!reach) throw new Error("The tests ended their process with no mutant awake.");
  if (reach.failed.length > 0) {
    throw new Error(`Tests fail with no mutant awake: ${reach.failed.slice(0, 5).join("; ")}`);
  }
  return reach;
}
