/**
 * Shows how to put the add-in into Excel on this machine: `npm run sideload`.
 *
 *     npm run sideload -- --copy [folder]    copies the manifest, on a Mac to where Excel looks for it
 *     npm run sideload -- --manifest dist/manifest.xml
 *
 * It starts nothing, and writes nothing unless asked with --copy.
 */
import { copyFileSync, existsSync, mkdirSync } from "node:fs";
import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { MAC_FOLDER, installSteps } from "./install-steps";

const { values, positionals } = parseArgs({
  options: { copy: { type: "boolean" }, manifest: { type: "string", default: "manifest.xml" } },
  allowPositionals: true,
});

const manifest = resolve(values.manifest);
if (!existsSync(manifest)) {
  console.error(`There is no file ${manifest}. Give the manifest with --manifest.`);
  process.exitCode = 1;
} else {
  console.log(`The manifest is ${manifest}\n`);
  if (values.copy) copyTo(positionals[0] ?? ownFolder());
  console.log(installSteps(process.platform));
  console.log("\nAll ways, and what to do about #NAME?: docs/install.md");
}

function ownFolder(): string | undefined {
  return process.platform === "darwin" ? join(homedir(), MAC_FOLDER) : undefined;
}

function copyTo(folder: string | undefined): void {
  if (folder === undefined) {
    console.error("Say where to: npm run sideload -- --copy \\\\computer\\folder\n");
    process.exitCode = 1;
    return;
  }
  mkdirSync(folder, { recursive: true });
  const target = join(folder, "fresh-concrete-functions.xml");
  copyFileSync(manifest, target);
  console.log(`It is copied to ${target}\n`);
}
