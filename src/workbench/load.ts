/**
 * Loads the parts of the workbench one after another, each in a task of its own: run together they
 * would block the page for longer than a person waits without a doubt. What is used of them their
 * other importers say, so that the rest stays out of the build.
 */
const PARTS: readonly (() => Promise<unknown>)[] = [
  () => import(/* webpackExports: [] */ "@univerjs/core"),
  () => import(/* webpackExports: [] */ "@univerjs/engine-render"),
  () => import(/* webpackExports: [] */ "@univerjs/engine-formula"),
  () => import(/* webpackExports: [] */ "@univerjs/ui"),
  () => import(/* webpackExports: [] */ "@univerjs/sheets"),
  () => import(/* webpackExports: [] */ "@univerjs/docs-ui"),
  () => import(/* webpackExports: [] */ "@univerjs/sheets-formula"),
  () => import(/* webpackExports: [] */ "@univerjs/sheets-ui"),
  () => import("./start-univer"),
  () => import("./workbench"),
];

/** Lets the page draw and answer before what comes next. */
const nextTask = () => new Promise((resolve) => setTimeout(resolve));

async function load(): Promise<void> {
  for (const part of PARTS) {
    await part();
    await nextTask();
  }
}

void load();
