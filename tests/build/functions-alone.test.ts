import { existsSync, readFileSync } from "node:fs";
import { runInNewContext } from "node:vm";

interface Metadata {
  readonly allowErrorForDataTypeAny?: boolean;
  readonly allowCustomDataForDataTypeAny?: boolean;
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly description: string;
    readonly parameters: readonly { readonly name: string; readonly description: string }[];
  }[];
}

const built = (file: string) => {
  if (!existsSync(`dist/${file}`)) throw new Error("Run npm run build first.");
  return readFileSync(`dist/${file}`, "utf8");
};
const metadata = JSON.parse(built("functions.json")) as Metadata;

/** Runs functions.js where there is nothing but what Excel's own runtime is sure to offer. */
function registeredAlone(): Map<string, unknown> {
  const registered = new Map<string, unknown>();
  class CellError extends Error {
    constructor(
      readonly code: string,
      message?: string,
    ) {
      super(message);
    }
  }
  const CustomFunctions = {
    associate: (id: string, implementation: unknown) => registered.set(id, implementation),
    Error: CellError,
    ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" },
  };
  runInNewContext(built("functions.js"), { CustomFunctions });
  return registered;
}

test("functions.js registers everything without a page, a worker or Office", () => {
  const ids = metadata.functions.map(({ id }) => id).sort();
  expect(ids).toContain("AIR");
  expect([...registeredAlone().keys()].sort()).toEqual(ids);
});

test("a function registered alone computes", () => {
  const air = registeredAlone().get("AIR") as (...tables: unknown[]) => unknown[][];
  // C173 Table 1 as in a meter maker's manual (2019): 48 oz subtract 0.3; 5.70 to the nearest 0.25.
  const [[result]] = air([[6]], null, [["48 oz"]], null, null) as [[number]];
  expect(result).toBe(5.75);
});

test("Excel hands errors in cells over to the functions, and data types as plain values", () => {
  expect(metadata.allowErrorForDataTypeAny).toBe(true);
  expect(metadata.allowCustomDataForDataTypeAny).toBe(false);
});

// Excel's dialogs show 255 characters of a description (limit of its own MacroOptions method, from
// memory).
test.each(metadata.functions)("$id: every description is short enough to be shown", (declared) => {
  for (const { description } of [declared, ...declared.parameters])
    expect(description.length).toBeLessThanOrEqual(255);
});
