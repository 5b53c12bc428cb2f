/**
 * Records the worksheet functions that have been added: `npm run record-functions`.
 *
 * Refuses when a recorded function has changed in a way that breaks workbooks. A record of functions
 * that were never published may be deleted and written anew.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import {
  RECORD,
  breakingChanges,
  declaredFunctions,
  type RecordedFunction,
} from "./functions-record";

async function record(): Promise<void> {
  const recorded = existsSync(RECORD)
    ? (JSON.parse(readFileSync(RECORD, "utf8")) as RecordedFunction[])
    : [];
  const declared = await declaredFunctions();
  const breaks = breakingChanges(recorded, declared);
  if (breaks.length > 0) {
    console.error(["Not recorded, because workbooks would break:", ...breaks].join("\n"));
    console.error(`If none of this was ever published, delete ${RECORD} and run this again.`);
    process.exitCode = 1;
    return;
  }
  writeFileSync(RECORD, `${JSON.stringify(declared, null, 2)}\n`);
  console.log(`${declared.length} functions are recorded in ${RECORD}.`);
}

void record();
