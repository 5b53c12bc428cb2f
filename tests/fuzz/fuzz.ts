import { Random } from "../simulation/random";
import { outcomeOf } from "./broken-promises";
import { hostileCall, type Target } from "./hostile-call";

/** What came of many calls of one function. */
export interface Fuzzed {
  /** Share of the calls that gave some value. */
  readonly valued: number;
  /** Each broken promise with the seed of the first call that broke it, and how many did. */
  readonly broken: readonly {
    readonly what: string;
    readonly seed: number;
    readonly calls: number;
  }[];
}

/** The seed of a call, so that one call alone can be made again. */
const seedOf = (seed: number, call: number) => (Math.imul(seed, 0x9e3779b1) + call) | 0;

/** Calls a function many times with hostile arguments. */
export function fuzz(target: Target, calls: number, seed: number): Fuzzed {
  const broken = new Map<string, { what: string; seed: number; calls: number }>();
  let valued = 0;
  // Traces of errors that nobody looks at take most of the time.
  Error.stackTraceLimit = 0;
  for (let call = 0; call < calls; call++) {
    const own = seedOf(seed, call);
    const given = hostileCall(target, new Random(own));
    const outcome = outcomeOf(() => target.run(...given));
    if (outcome.hasValue) valued += 1;
    for (const what of outcome.broken) {
      const kind = what.slice(0, 40);
      const before = broken.get(kind) ?? { what, seed: own, calls: 0 };
      broken.set(kind, { ...before, calls: before.calls + 1 });
    }
  }
  return { valued: valued / calls, broken: [...broken.values()] };
}
