/** Writes the reference pages from the sources: `npm run reference`. */
import { readFileSync, writeFileSync } from "node:fs";
import { measureDiagnosis, SEED } from "../tests/simulation/measure-diagnosis";
import { diagnosisPage } from "./reference/diagnosis-page";
import { functionsPage } from "./reference/functions-page";
import { withHouseTable } from "./reference/house-table";
import { functionsPageInSpanish } from "./reference/functions-page-in-spanish";
import { rulesPage } from "./reference/rules-page";
import { rulesPageInSpanish } from "./reference/rules-page-in-spanish";

async function write(): Promise<void> {
  writeFileSync("docs/rules.md", rulesPage());
  writeFileSync("docs/functions.md", await functionsPage());
  writeFileSync("docs/reglas.md", rulesPageInSpanish());
  writeFileSync("docs/funciones.md", await functionsPageInSpanish());
  writeFileSync("DEVELOPERS.md", withHouseTable(readFileSync("DEVELOPERS.md", "utf8")));
  writeFileSync("docs/diagnosis.md", diagnosisPage(measureDiagnosis(1000, SEED)));
}

void write();
