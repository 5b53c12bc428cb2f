import CopyWebpackPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import MinimizerPlugin from "minimizer-webpack-plugin";
import { readdirSync, readFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { tsImport } from "tsx/esm/api";
import { versionLine } from "./built-from.mjs";
import { devServer, ReadyLine } from "./dev-server.mjs";
import { examplesFile } from "./function-examples.mjs";
import { FunctionsMetadata } from "./functions-metadata.mjs";
import { STAND_INS, withoutHyphenation } from "./grid-parts/left-out.mjs";
import { Licences } from "./licences.mjs";
import { addressFrom } from "./origin.mjs";
import { docsPages } from "./site/docs-pages.mjs";
import { EmitFiles } from "./site/emit-files.mjs";
import { hostFiles } from "./site/host-files.mjs";
import { escaped } from "./site/markdown.mjs";
import { waysToInstall } from "./site/ways-to-install.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const src = resolve(root, "src");
const functionFiles = readdirSync(resolve(src, "functions"))
  .filter((name) => name.endsWith(".ts"))
  .map((name) => resolve(src, "functions", name));
const functionScripts = [resolve(src, "functions-in-excel/blank-cells.ts"), ...functionFiles];
const target = "es2022";
const { LOCAL_ORIGIN, manifestFor } = await tsImport(
  "../src/start-page/manifest-for.ts",
  import.meta.url,
);

/**
 * `--env origin=https://…` builds for that address, `--env anywhere` for any: the start page then makes
 * the manifest. Without either the build is for this machine.
 */
export default async (env, { mode }) => {
  const address = addressFrom(env.origin) ?? (env.anywhere ? undefined : LOCAL_ORIGIN);
  const version = versionLine();
  return configuration(env, mode, address, version);
};

const configuration = async (env, mode, address, version) => ({
  mode,
  context: root,
  target: ["web", target],
  devtool: false,
  entry: {
    functions: inOne("functions", functionScripts),
    spanish: resolve(src, "messages/spanish/script.ts"),
    // The page of the pane runs the functions as well, and both on the same reading and check.
    taskpane: inOne("taskpane", [...functionScripts, resolve(src, "pane/taskpane.ts")]),
    workbench: resolve(src, "workbench/load.ts"),
    "start-page": resolve(src, "start-page/start-page.ts"),
    "from-elsewhere": resolve(src, "start-page/from-elsewhere.ts"),
  },
  output: {
    path: resolve(root, "dist"),
    filename: "[name].js",
    publicPath: "",
    clean: true,
    // functions.js must run alone too, where there is neither a page nor a worker.
    globalObject: "globalThis",
  },
  resolve: { extensions: [".ts", ".mjs", ".js"], alias: STAND_INS },
  module: {
    // Everything comes with the page: nothing is fetched while somebody works.
    parser: { javascript: { dynamicImportMode: "eager" } },
    rules: [
      { test: /\.ts$/, loader: "esbuild-loader", options: { target } },
      {
        test: /\.ts$/,
        include: resolve(root, "src/fieldsheet/rules"),
        loader: resolve(root, "build/without-basis.mjs"),
        enforce: "pre",
      },
      { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
    ],
  },
  plugins: [
    new FunctionsMetadata(functionFiles, address),
    new MiniCssExtractPlugin({ filename: "[name].css" }),
    page("taskpane", "pane/taskpane.html", ["spanish", "taskpane"], { version }),
    // The workbench loads functions.js itself, once it stands in for Excel.
    page("workbench", "workbench/workbench.html", ["spanish", "workbench"], { version }),
    ...[
      ["index", "install.md"],
      ["instalar", "instalar.md"],
    ].map(([name, steps]) =>
      page(name, `start-page/${name}.html`, ["start-page"], {
        version,
        ways: waysToInstall(resolve(root, "docs", steps)),
        manifest: escaped(readFileSync(resolve(root, "manifest.xml"), "utf8")),
      }),
    ),
    page("from-elsewhere", "start-page/from-elsewhere.html", ["from-elsewhere"]),
    new EmitFiles(() => ({
      ...hostFiles(),
      ...docsPages(resolve(root, "docs"), version),
    })),
    new Licences(readFileSync(resolve(root, "LICENSE"), "utf8")),
    new CopyWebpackPlugin({
      patterns: [
        { from: "src/assets", to: "assets" },
        { from: "samples", to: "samples", noErrorOnMissing: true },
        { from: "src/functions/*.ts", to: "examples.json", transformAll: examplesFile },
        { from: "docs/*.png" },
        { from: "src/start-page/site.css", to: "docs" },
        ...(address
          ? [{ from: "manifest.xml", transform: (text) => manifestFor(`${text}`, address) }]
          : []),
      ],
    }),
    withoutHyphenation(),
    new ReadyLine(),
  ],
  optimization: {
    minimizer: [
      new MinimizerPlugin({
        minify: MinimizerPlugin.swcMinify,
        // The licences stand in licences.txt.
        extractComments: false,
        terserOptions: { ecma: 2022, compress: { passes: 2 } },
      }),
      new EsbuildPlugin({ target, css: true, include: /\.css$/ }),
    ],
  },
  performance: { hints: false },
  stats: "errors-warnings",
  infrastructureLogging: { level: "warn" },
  ...(env.WEBPACK_SERVE && { devServer: await devServer(Boolean(env.https)) }),
});

/**
 * Files as one that imports them all, in a layer of their own: a module that two scripts shared would keep
 * its name and its exports in both, and the rest could not be put together around it.
 */
function inOne(layer, files) {
  // Named from the root, so that the build is the same wherever it is made.
  const imports = files.map((file) => `import "./${relative(root, file)}";`);
  return { import: `data:text/javascript,${encodeURIComponent(imports.join(""))}`, layer };
}

function page(name, template, chunks, words = {}) {
  return new HtmlWebpackPlugin({
    ...words,
    ...(words.version && { meta: { version: words.version } }),
    filename: `${name}.html`,
    template: resolve(src, template),
    chunks,
    chunksSortMode: "manual",
    minify: false,
  });
}
