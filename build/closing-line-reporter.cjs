/** Ends a test run with one plain line, "N passed, N failed", whatever else was printed. */
module.exports = class ClosingLineReporter {
  onRunComplete(_contexts, results) {
    // A suite that cannot even start holds no test to count, so it counts as one that failed.
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    setImmediate(() => console.log(`${results.numPassedTests} passed, ${failed} failed`));
  }
};
