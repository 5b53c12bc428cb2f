/** Writes the reference pages from the sources: `npm run reference`. */
import { readFileSync, writeFileSync } from "node:fs";
import { measureDiagnosis, SEED } from "../tests/simulation/measure-diagnosis";
import { diagnosisPage } from "./reference/diagnosis-page";
import { functionsPage } from "./reference/functions-page";
import { withHouseTable } from "./reference/house-table";
import { rulesPage } from "./reference/rules-page";

async function write(): Promise<void> {
  writeFileSync("docs/rules.md", rulesPage());
  writeFileSync("docs/functions.md", await functionsPage());
  writeFileSync("DEVELOPERS.md", withHouseTable(readFileSync("DEVELOPERS.md", "utf8")));
  writeFileSync("docs/diagnosis.md", diagnosisPage(measureDiagnosis(1000, SEED)));
}

void write();
