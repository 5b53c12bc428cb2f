import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Said } from "../../src/command-line/said";

jest.setTimeout(60_000);

const program = join(mkdtempSync(join(tmpdir(), "parallel-")), "fresh-check.mjs");
const bundle = `import("./build/command-line.mjs").then(({ buildCommandLine }) => buildCommandLine(${JSON.stringify(program)}))`;
beforeAll(() => {
  execFileSync(process.execPath, ["--input-type=module", "-e", bundle]);
});

/** Every 40th of 400 tests foams too much: 3 divisions are more than 2 (memory: C173). */
const HEADER = "Sample,First reading,Second reading,Alcohol (oz),Foam (%),Low,High";
const ROWS = Array.from({ length: 400 }, (_, i) => `S-${i},6,6,16,${i % 40 === 0 ? 3 : 1},4.5,7.5`);
const CSV = `${HEADER}\n${ROWS.join("\n")}\n`;

function voidSamples(lines: string): string[] {
  const said = lines
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as Said);
  return said
    .flatMap((each) => (each.kind === "finding" && each.weight === "void" ? [each.sample] : []))
    .sort();
}

const foaming = ROWS.flatMap((_, i) => (i % 40 === 0 ? [`S-${i}`] : [])).sort();

test("the program is one file that Node runs alone, and its code says what was found", () => {
  const { stdout, stderr, status } = spawnSync(process.execPath, [program, "--json", "-"], {
    input: CSV,
    encoding: "utf8",
  });
  expect([status, stderr]).toEqual([1, ""]);
  expect(voidSamples(stdout)).toEqual(foaming);
});

test("whoever reads the first line only may stop there", () => {
  const { stderr } = spawnSync("sh", ["-c", `node ${program} --json - | head -n 1`], {
    // More than a pipe holds, so that the program is still writing when nobody reads any more.
    input: `${HEADER}\n${Array<string>(60).fill(ROWS.join("\n")).join("\n")}\n`,
    encoding: "utf8",
  });
  expect(stderr).toBe("");
});

const isThere = spawnSync("parallel", ["--version"]).status === 0;
if (!isThere)
  console.warn("GNU parallel is not installed (Debian: parallel): not tried with the command line");

(isThere ? test : test.skip)("GNU parallel shares a stream out among programs", () => {
  const { stdout } = spawnSync(
    "parallel",
    ["--pipe", "--header", ":", "-N", "100", "-j", "2", "node", program, "--json", "-"],
    { input: CSV, encoding: "utf8", env: { ...process.env, PARALLEL_HOME: tmpdir() } },
  );
  expect(voidSamples(stdout)).toEqual(foaming);
  const sheets = stdout.split("\n").filter((line) => line.includes('"kind":"sheet"'));
  expect(sheets).toHaveLength(4);
});
