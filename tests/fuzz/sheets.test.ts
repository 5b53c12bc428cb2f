import "../functions/custom-functions-runtime";
import { check, findings } from "../../src/functions/field-sheet";
import { Random } from "../simulation/random";
import { outcomeOf } from "./broken-promises";
import { hostileSheet } from "./hostile-sheet";

/** Sheets here; SHEETS=100000 makes more. */
const SHEETS = Number(process.env["SHEETS"] ?? 400);
const SEED = Number(process.env["SEED"] ?? 173);

test.each([
  ["CHECK", check],
  ["FINDINGS", findings],
])(
  "FRESH.%s keeps its promises whatever a sheet looks like",
  (_, run) => {
    const found: unknown[] = [];
    let valued = 0;
    for (let i = 0; i < SHEETS; i++) {
      const { headers, rows, setup } = hostileSheet(new Random(SEED * 100_003 + i));
      const { broken, hasValue } = outcomeOf(() => run(headers, rows, [[null]], [[null]], setup));
      valued += Number(hasValue);
      if (broken.length > 0) found.push({ i, broken });
    }
    expect(found).toEqual([]);
    expect(valued / SHEETS).toBeGreaterThan(0.2);
  },
  3_600_000,
);
