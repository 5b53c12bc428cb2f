import { checkTable } from "../../src/fieldsheet/check-table";
import { median } from "./in-turn";
import { HEADERS, rowsOf } from "./sheet";

const ROWS = 900_000;

/** What a sheet of 900,000 rows takes, in a process of its own. */
export interface LongSheet {
  /** The check ÷ JSON.parse of the same. */
  readonly ratio: number;
  /** Most memory that the process has held until the end of the check, the rows among it, MB. */
  readonly megabytes: number;
}

export function checkLongSheet(rounds = 3): LongSheet {
  const rows = rowsOf(ROWS);
  const time = (run: () => unknown) => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  const check = () => checkTable({ headers: HEADERS, rows });
  check();
  const megabytes = process.resourceUsage().maxRSS / 1024;
  const text = JSON.stringify(rows);
  const parse = () => JSON.parse(text) as unknown;
  return {
    ratio: median(Array.from({ length: rounds }, () => time(check) / time(parse))),
    megabytes,
  };
}
