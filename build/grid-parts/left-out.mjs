import { fileURLToPath } from "node:url";
import webpack from "webpack";

const at = (name) => fileURLToPath(new URL(`${name}.mjs`, import.meta.url));

/** Parts of the spreadsheet that nothing in a cell needs, and the few lines that stand in for each. */
export const STAND_INS = {
  "cjk-regex$": at("cjk-regex"),
  "franc-min$": at("franc-min"),
  "opentype.js$": at("opentype"),
};

/** The spreadsheet would carry 5 MB of hyphenation; American English is in its core. */
export function withoutHyphenation() {
  return new webpack.NormalModuleReplacementPlugin(/^\.\/[\w-]+\.js$/, (request) => {
    if (/@univerjs[\\/]engine-render[\\/]/.test(request.context))
      request.request = "data:text/javascript,export {}";
  });
}
