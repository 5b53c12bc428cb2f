import typescriptParser from "@typescript-eslint/parser";
import boundaries from "eslint-plugin-boundaries";
import officeAddins from "eslint-plugin-office-addins";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const layers = JSON.parse(readFileSync(new URL("import-order.json", import.meta.url), "utf8"));

/** The only places that know Excel; everything else reaches it through the port. */
const KNOWS_EXCEL = ["src/hosts/excel/**", "src/pane/taskpane.ts"];

export default [
  { ignores: ["dist/**", "release/**", "coverage/**"] },
  ...officeAddins.configs.recommended,
  {
    files: ["**/*.{ts,mts}"],
    languageOptions: { parser: typescriptParser },
    // The compiler looks after these, and knows types and overloads.
    rules: { "no-undef": "off", "no-redeclare": "off" },
  },
  {
    files: ["**/*.{mjs,cjs}"],
    languageOptions: { ecmaVersion: 2024 },
    rules: { "no-undef": "off" },
  },
  {
    files: ["src/**/*.ts"],
    plugins: { boundaries },
    settings: {
      "boundaries/root-path": root,
      "boundaries/elements": Object.entries(layers).map(([type, { folder }]) => ({
        type,
        pattern: folder,
      })),
      "import/resolver": { node: { extensions: [".ts", ".mjs", ".js"] } },
    },
    rules: {
      "boundaries/dependencies": [
        "error",
        {
          default: "disallow",
          message: "Imports point one way only: see build/import-order.json.",
          policies: Object.entries(layers).map(([type, { mayImport }]) => ({
            from: { element: { type } },
            allow: { to: { element: { types: { anyOf: [type, ...mayImport] } } } },
          })),
        },
      ],
    },
  },
  {
    files: ["src/**/*.ts"],
    ignores: KNOWS_EXCEL,
    rules: {
      "no-restricted-globals": [
        "error",
        ...["Office", "Excel", "OfficeExtension", "OfficeRuntime"].map((name) => ({
          name,
          message: "Only src/hosts/excel knows Excel; use the port, src/hosts/sheet-host.ts.",
        })),
      ],
    },
  },
  // The entry of the task pane joins the pane and the Excel host.
  { files: ["src/pane/taskpane.ts"], rules: { "boundaries/dependencies": "off" } },
];
