/** What is used, so that what is not can be told: `npm run unused`. */
export default {
  entry: [
    "src/functions/*.ts",
    "src/functions-in-excel/*.ts",
    "src/pane/taskpane.ts",
    "src/start-page/{start-page,from-elsewhere}.ts",
    "scripts/*.{ts,mts}",
    // Run as a program of its own for each mutant.
    "scripts/mutation/worker.ts",
    "tests/**/*.test.ts",
    // Read from their folder by a test.
    "tests/fieldsheet/rules/*.ts",
    // Bundled for a test, or run by it as a program.
    "tests/files/open-in-child.ts",
    "tests/reading/corpus-score.ts",
    // Kept apart: counted when the vocabulary is finished.
    "tests/reading/corpus/blind/{tables,whole-sheets,surrounded,forms}.ts",
    "tests/reading/corpus/blind-second/tables.ts",
    "build/*.{mjs,cjs}",
    // Stand in for parts of the spreadsheet.
    "build/grid-parts/*.mjs",
  ],
  project: ["src/**/*.ts", "scripts/**/*.{ts,mts}", "tests/**/*.{ts,cjs}", "build/**/*.{mjs,cjs}"],
  // Named in a text that a test bundles.
  ignoreDependencies: ["@univerjs/sheets-conditional-formatting", "@univerjs/sheets-note"],
  ignoreBinaries: ["parallel"],
};
