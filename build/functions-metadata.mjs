import CustomFunctionsMetadataPlugin from "custom-functions-metadata-plugin";
import webpack from "webpack";

const FILE = "functions.json";

/**
 * Writes functions.json from the declarations in the source, as Excel is to read it.
 *
 * The generator of the metadata cannot say that errors in cells are handed over to the functions,
 * and always says that whole data types are. Here errors come in, so that they can be named, and a
 * data type comes in as the plain value that its cell shows.
 */
export class FunctionsMetadata {
  /** @param {string[]} files The files that declare worksheet functions. */
  constructor(files) {
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
          allowCustomDataForDataTypeAny: false,
          allowErrorForDataTypeAny: true,
        };
        compilation.updateAsset(FILE, new sources.RawSource(JSON.stringify(patched, null, 2)));
      });
    });
  }
}
