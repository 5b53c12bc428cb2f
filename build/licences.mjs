import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import webpack from "webpack";

/** Licences under which code may be passed on with a notice and nothing else. */
const PERMISSIVE = ["MIT", "ISC", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "CC0-1.0"];

/**
 * Writes licences.txt: every package of which something is in the build, with its licence. The build
 * fails where one of them is not under a permissive licence.
 */
export class Licences {
  /** @param {string} own The text of this project's own licence. */
  constructor(own) {
    this.own = own;
    /** @type {Set<string>} */
    this.packages = new Set();
  }

  apply(compiler) {
    const { Compilation, sources } = webpack;
    compiler.hooks.compilation.tap("Licences", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "Licences", stage }, () => {
        // Styles are read in compilations of their own; the main one is the last to end.
        for (const module of allModules(compilation.modules)) {
          const folder = packageFolder(module.resource);
          if (folder) this.packages.add(folder);
        }
        if (compilation.compiler.isChild()) return;
        const packages = [...this.packages].map(described).sort(byName);
        const others = packages.filter(({ licence }) => !PERMISSIVE.includes(licence));
        for (const { name, licence } of others)
          compilation.errors.push(
            new webpack.WebpackError(
              `${name} is under "${licence}", which is not among the permissive licences in build/licences.mjs. Use another package.`,
            ),
          );
        compilation.emitAsset(
          "licences.txt",
          new sources.RawSource(licencesText(this.own, packages)),
        );
      });
    });
  }
}

/** Modules that were put together into one count each for itself. */
function* allModules(modules) {
  for (const module of modules) {
    yield module;
    if (module.modules) yield* allModules(module.modules);
  }
}

/** The folder of the npm package to which a file belongs. */
function packageFolder(path) {
  return /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(path ?? "")?.[0];
}

function described(folder) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((each) => /^licen[cs]e(\.\w+)?$/i.test(each));
  const text =
    file && existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8") : "";
  return { name: `${name} ${version}`, licence: license ?? namedIn(text), text: text.trim() };
}

/** Some packages bring the text of their licence and do not name it. */
function namedIn(text) {
  return /^\s*Apache License\s+Version 2\.0/.test(text) ? "Apache-2.0" : "not named";
}

function byName(a, b) {
  return a.name < b.name ? -1 : Number(a.name > b.name);
}

/** Packages with the same text share it. */
function licencesText(own, packages) {
  const byText = new Map();
  for (const { name, licence, text } of packages) {
    const key = text || `The package brings no text of its licence, ${licence}.`;
    byText.set(key, [...(byText.get(key) ?? []), `${name} (${licence})`]);
  }
  const parts = [...byText].map(([text, names]) => `${names.join("\n")}\n\n${text}`);
  const line = `\n\n${"-".repeat(80)}\n\n`;
  return `${[`Fresh Concrete Functions\n\n${own.trim()}`, ...parts].join(line)}\n`.replaceAll(
    "\r\n",
    "\n",
  );
}
