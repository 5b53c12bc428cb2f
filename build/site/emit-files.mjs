import webpack from "webpack";

/** Puts files into the build that are made anew each time, for a server as for a folder. */
export class EmitFiles {
  /** @param {() => Record<string, string>} make Gives the files by their names. */
  constructor(make) {
    this.make = make;
  }

  apply(compiler) {
    const { Compilation, sources } = webpack;
    compiler.hooks.thisCompilation.tap("EmitFiles", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_ADDITIONS;
      compilation.hooks.processAssets.tap({ name: "EmitFiles", stage }, () => {
        for (const [name, text] of Object.entries(this.make()))
          compilation.emitAsset(name, new sources.RawSource(text));
      });
    });
  }
}
