import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import webpack from "webpack";
import { anchorOf } from "./site/markdown.mjs";

const FILE = "functions.json";

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
        const generated = JSON.parse(assets[FILE].source().toString());
        const patched = {
          ...generated,
          functions: generated.functions.map((declared) => this.withHelp(declared)),
          allowCustomDataForDataTypeAny: false,
          allowErrorForDataTypeAny: true,
        };
        compilation.updateAsset(FILE, new sources.RawSource(JSON.stringify(patched, null, 2)));
      });
    });
  }

  withHelp(declared) {
    if (!this.address) return declared;
    const anchor = anchorOf(`FRESH.${declared.name}`);
    return { ...declared, helpUrl: `${this.address}/docs/functions.html#${anchor}` };
  }
}
