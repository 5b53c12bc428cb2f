import { readFileSync } from "node:fs";
import { relative } from "node:path";
import { createInstrumenter } from "@stryker-mutator/instrumenter";
import { createInjector } from "typed-inject";

/** A change to one place of the source that a test should notice. */
export interface Mutant {
  readonly id: string;
  readonly mutatorName: string;
  readonly fileName: string;
  readonly replacement: string;
  readonly location: { readonly start: { readonly line: number; readonly column: number } };
}

const silent = () => undefined;
const logger = {
  ...{ trace: silent, debug: silent, info: silent, warn: silent, error: silent, fatal: silent },
  ...{ isTraceEnabled: () => false, isDebugEnabled: () => false, isInfoEnabled: () => false },
  ...{ isWarnEnabled: () => false, isErrorEnabled: () => false, isFatalEnabled: () => false },
};

/**
 * The sources with all of their mutants in them, asleep; one is woken by its number.
 *
 * @param files paths of sources
 * @returns the mutants, and by path the text of each source with the mutants in it
 */
export async function instrumented(files: readonly string[]) {
  const options = { excludedMutations: [], plugins: null, ignorers: [], noHeader: false };
  const instrumenter = createInjector()
    .provideValue("logger", logger)
    .injectFunction(createInstrumenter as never) as unknown as {
    instrument(
      sources: object[],
      options: object,
    ): Promise<{
      files: { name: string; content: string }[];
      mutants: Mutant[];
    }>;
  };
  const sources = files.map((name) => ({
    name,
    mutate: true,
    content: readFileSync(name, "utf8"),
  }));
  const { files: texts, mutants } = await instrumenter.instrument(sources, options);
  return {
    texts: new Map(texts.map(({ name, content }) => [name, content])),
    mutants: mutants.map((mutant) => ({ ...mutant, fileName: relative(".", mutant.fileName) })),
  };
}
