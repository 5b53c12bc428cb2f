import { readFileSync } from "node:fs";
import { RULES } from "../../src/fieldsheet/rules";
import { SLIPS } from "../../src/fieldsheet/diagnosis/diagnose";
import functions from "../functions/functions-record.json";

const page = readFileSync("docs/clauses.md", "utf8");
const rows = page
  .split("\n")
  .filter((line) => line.startsWith("|") && !/^\|[\s-]*\|[\s-]*\|$/.test(line))
  .map((line) => line.split("|").map((cell) => cell.trim()))
  .map(([, clause, by]) => ({ clause: clause!, by: by! }))
  .filter(({ by }) => by !== "looked at by");
const named = rows.flatMap(({ by }) => [...by.matchAll(/`([^`]+)`/g)].map((match) => match[1]!));

const rules: string[] = RULES.map(({ id }) => id);
const slips: string[] = [...SLIPS.map(({ id }) => id), "unexplained"];

test("there are clauses", () => {
  expect(rows.length).toBeGreaterThan(40);
});

test.each(rows)("$clause: looked at, or the reason why not", ({ by }) => {
  // What is named looks at it; where nothing is named, some words say why nothing can.
  expect(by).toMatch(/`.+`|^Nothing( by itself)?: .{20,}|^The cautions .{20,}/);
});

test("every rule and slip is named", () => {
  expect([...rules, ...slips].filter((id) => !named.includes(id))).toEqual([]);
});

test("whatever is named is there", () => {
  const known = [...rules, ...slips, ...functions.map(({ name }) => `FRESH.${name}`)];
  expect(named.filter((name) => !known.includes(name))).toEqual([]);
});
