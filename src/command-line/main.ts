import { createReadStream, readFileSync, statSync } from "node:fs";
import { once } from "node:events";
import { run } from "./run";

/** Whoever reads what is written may have had enough, as `head` has. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

run(process.argv.slice(2), {
  file: (name) => ({
    size: statSync(name).size,
    whole: () => readFileSync(name),
    pieces: () => createReadStream(name),
  }),
  // In the order in which programs look for the language of their words.
  locale: process.env.LC_ALL || process.env.LC_MESSAGES || process.env.LANG,
  input: () => process.stdin,
  write: async (line) => {
    if (!process.stdout.write(`${line}\n`)) await once(process.stdout, "drain");
  },
  tell: (line) => process.stderr.write(`${line}\n`),
}).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    console.error(error);
    process.exitCode = 2;
  },
);
