/** Writes the sample files: `npm run samples`. */
import { mkdirSync, writeFileSync } from "node:fs";
import { sampleFiles } from "./samples/sample-files";

async function makeSamples(): Promise<void> {
  mkdirSync("samples", { recursive: true });
  for (const [name, contents] of Object.entries(await sampleFiles())) {
    writeFileSync(`samples/${name}`, contents);
    console.log(`samples/${name}`);
  }
}

void makeSamples();
