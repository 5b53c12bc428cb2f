import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import order from "../build/import-order.json";

type Layer = keyof typeof order;

/** The entry of the task pane joins the pane and the Excel host, so both rules spare it. */
const JOINS_PANE_AND_EXCEL = "src/pane/taskpane.ts";
const IMPORT = /(?:\bfrom\s*|\bimport\s*\(?\s*)"(\.[^"]+)"/g;

const files = readdirSync("src", { recursive: true, encoding: "utf8" })
  .map((path) => `src/${path.replaceAll("\\", "/")}`)
  .filter((path) => path.endsWith(".ts"));

function layerOf(path: string): Layer | undefined {
  const within = (Object.keys(order) as Layer[]).filter((layer) =>
    path.startsWith(`${order[layer].folder}/`),
  );
  return within.sort((a, b) => order[b].folder.length - order[a].folder.length)[0];
}

function importsOf(path: string): string[] {
  const text = readFileSync(join(process.cwd(), path), "utf8");
  return [...text.matchAll(IMPORT)].map(([, target]) =>
    posix.join(posix.dirname(path), target!.replace(/\.ts$/, "")),
  );
}

/** The ways through the imports that lead back to where they began, each once. */
function circles(imports: ReadonlyMap<string, readonly string[]>): string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const follow = (path: string, way: readonly string[]) => {
    const again = way.indexOf(path);
    if (again >= 0) found.push([...way.slice(again), path].join(" → "));
    if (again >= 0 || done.has(path)) return;
    for (const target of imports.get(path) ?? []) follow(target, [...way, path]);
    done.add(path);
  };
  for (const path of imports.keys()) follow(path, []);
  return found;
}

test("imports are found, so that the rules below look at something", () => {
  expect(importsOf("src/methods/volumetric-air/corrected-air.ts")).toContain(
    "src/measure/rounding",
  );
});

test("every file belongs to a layer", () => {
  expect(files.filter((path) => layerOf(path) === undefined)).toEqual([]);
});

test("imports point one way only", () => {
  const wrong = files
    .filter((path) => path !== JOINS_PANE_AND_EXCEL)
    .flatMap((path) => {
      const layer = layerOf(path)!;
      const allowed: readonly string[] = [layer, ...order[layer].mayImport];
      return importsOf(path)
        .filter((target) => !allowed.includes(layerOf(`${target}.ts`) ?? "nothing"))
        .map((target) => `${path} imports ${target}`);
    });
  expect(wrong).toEqual([]);
});

test("no files import one another in a circle", () => {
  const imports = new Map(
    files.map((path) => [
      path,
      importsOf(path).flatMap((target) => files.filter((file) => file === `${target}.ts`)),
    ]),
  );
  expect(
    circles(
      new Map([
        ["a", ["b"]],
        ["b", ["c"]],
        ["c", ["b"]],
      ]),
    ),
  ).toEqual(["b → c → b"]);
  expect(circles(imports)).toEqual([]);
});

test("only the Excel host touches Excel", () => {
  const touching = files.filter((path) =>
    /\b(?:Office|OfficeRuntime|OfficeExtension|Excel)\.[A-Za-z]/.test(readFileSync(path, "utf8")),
  );
  const others = touching.filter(
    (path) => path !== JOINS_PANE_AND_EXCEL && layerOf(path) !== "excel host",
  );
  expect(others).toEqual([]);
});
