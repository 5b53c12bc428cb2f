import { bind } from "jest-each";
import { expect } from "expect";

/** A test as it was written down while its file ran, before any test is run. */
export interface CollectedTest {
  readonly name: string;
  readonly run: () => unknown;
}

type Written = (name: string, run?: () => unknown) => void;

/**
 * The few words of jest that the tests of the core are written in, without its machinery: a file is
 * run many thousand times, once for each mutant, so that collecting its tests must cost next to nothing.
 */
export const wordsOfTests = () => {
  const tests: CollectedTest[] = [];
  const before: (() => unknown)[] = [];
  const titles: string[] = [];

  const test: Written = (name, run) => {
    if (run) tests.push({ name: [...titles, name].join(" › "), run });
  };
  const describe: Written = (name, run) => {
    titles.push(name);
    run?.();
    titles.pop();
  };
  const each = (word: Written) => Object.assign(word, { each: bind(word as never, false) });
  const once = (run: () => unknown) => {
    before.push(run);
  };
  const nothing = () => undefined;
  const words = {
    ...{ test: each(test), it: each(test), describe: each(describe), expect },
    ...{ beforeAll: once, beforeEach: once, afterAll: nothing, afterEach: nothing },
    jest: { setTimeout: nothing, retryTimes: nothing },
  };
  return { words, tests, before };
};
