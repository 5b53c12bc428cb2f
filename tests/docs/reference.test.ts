import { readFileSync } from "node:fs";
import { functionsPage } from "../../scripts/reference/functions-page";
import { withHouseTable } from "../../scripts/reference/house-table";
import { functionsPageInSpanish } from "../../scripts/reference/functions-page-in-spanish";
import { rulesPage } from "../../scripts/reference/rules-page";
import { rulesPageInSpanish } from "../../scripts/reference/rules-page-in-spanish";

/** A committed page. */
const committed = (name: string) => readFileSync(`docs/${name}`, "utf8").replaceAll("\r\n", "\n");

describe("the reference pages are those that the sources give; if not, run: npm run reference", () => {
  test("docs/rules.md", () => {
    expect(committed("rules.md")).toBe(rulesPage());
  });

  test("docs/functions.md", async () => {
    expect(committed("functions.md")).toBe(await functionsPage());
  });

  test("docs/reglas.md", () => {
    expect(committed("reglas.md")).toBe(rulesPageInSpanish());
  });

  test("docs/funciones.md", async () => {
    expect(committed("funciones.md")).toBe(await functionsPageInSpanish());
  });

  test("the house in DEVELOPERS.md", () => {
    const page = readFileSync("DEVELOPERS.md", "utf8").replaceAll("\r\n", "\n");
    expect(page).toBe(withHouseTable(page));
  });

  // docs/diagnosis.md is held by tests/simulation, which measures what it tells.
});

test("a page says nothing of what is not there", () => {
  for (const name of ["rules.md", "functions.md", "diagnosis.md", "reglas.md", "funciones.md"]) {
    expect(committed(name)).not.toMatch(/undefined|\[object|\{\w+\}/);
  }
});
