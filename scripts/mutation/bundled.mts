import { readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { build } from "esbuild";

/**
 * Tests and the sources that they look at as one text, which is run again for each mutant: what a module
 * works out while it loads is then worked out with the mutant awake. Packages stay outside.
 *
 * @param tests paths of tests
 * @param texts by path, what stands for a source instead of its file
 */
export async function bundled(tests: readonly string[], texts: ReadonlyMap<string, string>) {
  const contents = tests.map((test) => `import ${JSON.stringify(resolve(test))};`).join("\n");
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: ".", loader: "ts" },
    ...{ bundle: true, write: false, platform: "node", format: "cjs", packages: "external" },
    logLevel: "error",
    plugins: [
      {
        name: "mutants",
        setup: ({ onLoad }) => {
          onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
            const text = texts.get(path);
            return text === undefined ? null : { contents: text, loader: "ts" };
          });
          // Some tests look for files beside themselves.
          onLoad({ filter: /\/tests\/.*\.ts$/ }, ({ path }) => {
            const here = `const __dirname = ${JSON.stringify(dirname(path))};`;
            return { contents: `${here}\n${readFileSync(path, "utf8")}`, loader: "ts" };
          });
        },
      },
    ],
  });
  return outputFiles[0]!.text;
}
