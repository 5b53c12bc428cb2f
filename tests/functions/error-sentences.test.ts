import { readdirSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import "./custom-functions-runtime";

type WorksheetFunction = (...given: unknown[][][]) => unknown[][];

const FOLDER = join(__dirname, "../../src/functions");
const functions: [name: string, run: WorksheetFunction][] = readdirSync(FOLDER)
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) => Object.entries(require(join(FOLDER, file)) as object));

const cell = fc.constantFrom<unknown>(
  ...[null, "", 0, 1, -1, 0.25, 3, 5.5, 6.1, 60, 140, 4000, 1e9, true],
  ...["about 6", "5,25", "48 oz", "si", "ft3", "3/4 in", { code: "#N/A" }],
);
const range = fc
  .tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) => {
    const row = fc.array(cell, { minLength: columns, maxLength: columns });
    return fc.array(row, { minLength: rows, maxLength: rows });
  });
const argument = fc.oneof(
  cell.map((value) => [[value]]),
  range,
);

/** The sentences of all errors in what a function gives. */
function sentencesOf(run: () => unknown[][]): string[] {
  try {
    return run()
      .flat()
      .flatMap((value) => (value instanceof Error ? [value.message] : []));
  } catch (error) {
    return [(error as Error).message];
  }
}

test.each(functions)("%s: whatever is given, an error is a whole sentence", (_, run) => {
  fc.assert(
    fc.property(fc.array(argument, { minLength: 2, maxLength: 8 }), (given) => {
      for (const sentence of sentencesOf(() => run(...given))) {
        expect(sentence).toMatch(/^[\p{Lu}\d“-].*[.?]$/u);
        expect(sentence).not.toMatch(/undefined|null|NaN|Infinity|\[object|\{|: :/);
      }
    }),
    { seed: 173, numRuns: 200 },
  );
});
