import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import { readFileSync } from "node:fs";
import webpack from "webpack";
import { anchorOf } from "./site/markdown.mjs";

const FILE = "functions.json";
/** The same in Spanish: what every sentence of the declarations is there, and the page with the help. */
const SPANISH = {
  file: "functions-es.json",
  words: new URL("function-help/spanish.json", import.meta.url),
  helpPage: "funciones.html",
};

/**
 * Writes functions.json from the declarations in the source, as Excel is to read it.
 *
 * The generator of the metadata cannot say that errors in cells are handed over to the functions,
 * and always says that whole data types are. Here errors come in, so that they can be named, and a
 * data type comes in as the plain value that its cell shows.
 */
export class FunctionsMetadata {
  /**
   * @param {string[]} files The files that declare worksheet functions.
   * @param {string} [address] Where the add-in is served, so that each function leads to its help. A
   *   build for any host leaves the help out: Excel takes whole addresses only.
   */
  constructor(files, address) {
    this.address = address;
    this.generator = new CustomFunctionsMetadataPlugin({ input: files, output: FILE });
  }

  apply(compiler) {
    this.generator.apply(compiler);
    const { Compilation, sources } = webpack;
    compiler.hooks.compilation.tap("FunctionsMetadata", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "FunctionsMetadata", stage }, (assets) => {
        if (!assets[FILE]) return;
        // The generator puts the file into the compilations of pages and styles, too.
        if (compilation.compiler.isChild()) return compilation.deleteAsset(FILE);
        const generated = {
          ...JSON.parse(assets[FILE].source().toString()),
          allowCustomDataForDataTypeAny: false,
          allowErrorForDataTypeAny: true,
        };
        const written = (declarations, helpPage) => {
          const functions = declarations.functions.map((one) => this.withHelp(one, helpPage));
          return new sources.RawSource(JSON.stringify({ ...declarations, functions }, null, 2));
        };
        compilation.updateAsset(FILE, written(generated, "functions.html"));
        const said = JSON.parse(readFileSync(SPANISH.words, "utf8"));
        compilation.emitAsset(
          SPANISH.file,
          written(inOtherWords(generated, said), SPANISH.helpPage),
        );
      });
    });
  }

  withHelp(declared, page) {
    if (!this.address) return declared;
    const anchor = anchorOf(`FRESH.${declared.name}`);
    return { ...declared, helpUrl: `${this.address}/docs/${page}#${anchor}` };
  }
}

/**
 * The declarations with their sentences in another language; names and ids stay.
 *
 * @template {{ functions: readonly { description: string; parameters: readonly { description: string }[] }[] }} Declared
 * @param {Declared} declared
 * @param {Record<string, string>} said What each sentence is there. One that is missing, or left over, fails the build.
 * @returns {Declared}
 */
export function inOtherWords(declared, said) {
  const left = new Set(Object.keys(said));
  const words = (sentence) => {
    if (!said[sentence]) throw new Error(`In no other language: “${sentence}”`);
    left.delete(sentence);
    return said[sentence];
  };
  const functions = declared.functions.map((one) => ({
    ...one,
    description: words(one.description),
    parameters: one.parameters.map((each) => ({ ...each, description: words(each.description) })),
  }));
  if (left.size > 0) throw new Error(`No function says any more: “${[...left].join("”, “")}”`);
  return { ...declared, functions };
}
