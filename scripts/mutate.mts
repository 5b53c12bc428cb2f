/*
 * Which changes to the source would no test notice? `npm run mutate -- measure methods` changes one place
 * at a time and runs the tests that reach it. Prints what was not noticed, by file and line, and the
 * share that was; ends with 1 where that is less than the folder's least (scripts/mutation/folders.ts).
 * Whoever finds that a change alters nothing that can be seen writes it into scripts/mutation/equivalent.ts.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { build } from "esbuild";
import { bundled } from "./mutation/bundled.mjs";
import { EQUIVALENT } from "./mutation/equivalent.mjs";
import { FOLDERS, type MutatedFolder } from "./mutation/folders.mjs";
import { instrumented, type Mutant } from "./mutation/instrumented.mjs";
import { runMutants } from "./mutation/run-mutants.mjs";

const CACHE = "node_modules/.cache/mutation";
const PROCESSES = Number(process.env["PROCESSES"] ?? 2);

/** Tests that put something else in a module's place need the runner that loads modules one by one. */
const REPLACES_MODULES = /\bjest\.mock\(/;

const filesIn = (folder: string, ending: string) =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(ending))
    .map((name) => resolve(folder, name));

const lineOf = ({ fileName, location }: Mutant) =>
  readFileSync(fileName, "utf8").split("\n")[location.start.line]!.trim();

const altersNothing = (mutant: Mutant) =>
  EQUIVALENT.some(
    ({ file, line, to }) =>
      file === mutant.fileName && to === mutant.replacement && line === lineOf(mutant),
  );

async function mutate(name: string, { of, not = [], tests, wider = [], least }: MutatedFolder) {
  const left = not.map((folder) => resolve("src", folder));
  const only = process.env["ONLY"];
  const sources = of
    .flatMap((folder) => filesIn(join("src", folder), ".ts"))
    .filter((file) => !left.some((folder) => file.startsWith(folder)))
    .filter((file) => !only || file.includes(only));
  const { texts, mutants } = await instrumented(sources);
  let unnoticed: readonly Mutant[] = mutants;
  for (const folders of [tests, ...wider.map((folder) => [folder])]) {
    const bundle = resolve(CACHE, `${name}.cjs`);
    const testFiles = folders
      .flatMap((folder) => filesIn(join("tests", folder), ".test.ts"))
      .filter((file) => !REPLACES_MODULES.test(readFileSync(file, "utf8")));
    writeFileSync(bundle, await bundled(testFiles, texts));
    unnoticed = await runMutants(bundle, resolve(CACHE, "worker.cjs"), unnoticed, PROCESSES);
  }
  const missed = unnoticed.filter((mutant) => !altersNothing(mutant));
  for (const mutant of missed) {
    const { fileName, location, mutatorName, replacement } = mutant;
    console.log(`${fileName}:${location.start.line + 1}  ${mutatorName}  ${lineOf(mutant)}`);
    console.log(`    → ${replacement.replace(/\s+/g, " ").slice(0, 120)}`);
  }
  const share = 100 * (1 - missed.length / mutants.length);
  console.log(
    `${name}: ${share.toFixed(1)} % of ${mutants.length} noticed, ${unnoticed.length - missed.length} alter nothing, ${missed.length} not noticed; at least ${least} %`,
  );
  return share >= least;
}

mkdirSync(CACHE, { recursive: true });
await build({
  ...{ entryPoints: ["scripts/mutation/worker.ts"], outfile: join(CACHE, "worker.cjs") },
  ...{ bundle: true, platform: "node", packages: "external", logLevel: "error" },
});
const chosen = process.argv.slice(2).filter((word) => word in FOLDERS);
let enough = true;
for (const name of chosen.length > 0 ? chosen : Object.keys(FOLDERS)) {
  enough = (await mutate(name, FOLDERS[name]!)) && enough;
}
process.exitCode = enough ? 0 : 1;
