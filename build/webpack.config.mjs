import CopyWebpackPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import { readdirSync } from "node:fs";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import webpack from "webpack";
import { devServer, ReadyLine } from "./dev-server.mjs";
import { examplesFile } from "./function-examples.mjs";
import { FunctionsMetadata } from "./functions-metadata.mjs";
import { addressFrom, manifestFor } from "./origin.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const src = resolve(root, "src");
const functionFiles = readdirSync(resolve(src, "functions"))
  .filter((name) => name.endsWith(".ts"))
  .map((name) => resolve(src, "functions", name));
const target = "es2022";

export default async (env, { mode }) => ({
  mode,
  context: root,
  // functions.js must run where there is neither a page nor a worker, so nothing is shared with it.
  target: ["web", target],
  devtool: false,
  entry: {
    functions: functionFiles,
    taskpane: resolve(src, "pane/taskpane.ts"),
    workbench: resolve(src, "workbench/workbench.ts"),
  },
  output: { path: resolve(root, "dist"), filename: "[name].js", publicPath: "", clean: true },
  resolve: { extensions: [".ts", ".mjs", ".js"] },
  module: {
    // Everything comes with the page: nothing is fetched while somebody works.
    parser: { javascript: { dynamicImportMode: "eager" } },
    rules: [
      { test: /\.ts$/, loader: "esbuild-loader", options: { target } },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
    ],
  },
  plugins: [
    new FunctionsMetadata(functionFiles),
    new MiniCssExtractPlugin({ filename: "[name].css" }),
    page("taskpane", "pane/taskpane.html", ["functions", "taskpane"]),
    // The workbench loads functions.js itself, once it stands in for Excel.
    page("workbench", "workbench/workbench.html", ["workbench"]),
    new CopyWebpackPlugin({
      patterns: [
        { from: "src/assets", to: "assets" },
        { from: "samples", to: "samples", noErrorOnMissing: true },
        { from: "src/functions/*.ts", to: "examples.json", transformAll: examplesFile },
        { from: "manifest.xml", transform: (text) => manifestFor(text, addressFrom(env.origin)) },
      ],
    }),
    withoutHyphenation(),
    new ReadyLine(),
  ],
  optimization: { minimizer: [new EsbuildPlugin({ target, css: true })] },
  performance: { hints: false },
  stats: "errors-warnings",
  infrastructureLogging: { level: "warn" },
  ...(env.WEBPACK_SERVE && { devServer: await devServer(Boolean(env.https)) }),
});

function page(name, template, chunks) {
  return new HtmlWebpackPlugin({
    filename: `${name}.html`,
    template: resolve(src, template),
    chunks,
    chunksSortMode: "manual",
    minify: false,
  });
}

/** The spreadsheet would carry 5 MB of hyphenation for languages in which nobody writes in cells. */
function withoutHyphenation() {
  return new webpack.NormalModuleReplacementPlugin(/^\.\/(?!en-)[\w-]+\.js$/, (request) => {
    if (/@univerjs[\\/]engine-render[\\/]/.test(request.context))
      request.request = "data:text/javascript,export {}";
  });
}
