import { readFileSync } from "node:fs";
import { join } from "node:path";
import { startExcel, untilReleased } from "../../excel-client/excel-client";
import { figuresTable } from "./figures-table";
import { MEASURED_ROWS, measureHost, type HostFigures } from "./measure-host";

/** The most that a request or an answer may have, to stay well clear of Excel's 5 MB. */
const MOST_BYTES = 3_500_000;

/** Syncs that reading alone and reading and marking may take, by rows of 12 columns. */
const ALLOWED = [
  { rows: 1_000, read: 4, both: 4 },
  { rows: 100_000, read: 8, both: 12 },
];

describe("what the host asks of Excel", () => {
  const excel = startExcel();
  afterAll(untilReleased);
  const figures: HostFigures[] = [];
  const of = (rows: number): HostFigures => figures.find((one) => one.rows === rows)!;

  beforeAll(async () => {
    for (const rows of MEASURED_ROWS) figures.push(await measureHost(excel, rows));
    const times = figures.map(({ rows, seconds }) => `${rows} rows ${seconds.toFixed(2)} s`);
    process.stdout.write(`${figuresTable(figures).join("\n")}\n${times.join(", ")}\n`);
  }, 120_000);

  test.each(ALLOWED)("stays within the syncs allowed for $rows rows", ({ rows, read, both }) => {
    const { readSyncs, markSyncs } = of(rows);
    expect(readSyncs).toBeLessThanOrEqual(read);
    expect(readSyncs + markSyncs).toBeLessThanOrEqual(both);
  });

  test("keeps every request and answer under 3.5 MB", () => {
    for (const { largestRequest, largestResponse } of figures) {
      expect(largestRequest).toBeLessThan(MOST_BYTES);
      expect(largestResponse).toBeLessThan(MOST_BYTES);
    }
  });

  test("grows no faster than the rows", () => {
    const hundredThousand = of(100_000);
    const million = of(1_000_000);
    expect(million.readSyncs).toBeLessThanOrEqual(10 * hundredThousand.readSyncs);
    expect(million.markSyncs).toBe(hundredThousand.markSyncs);
    // Ten times the rows; were the time to grow with their square, it would be a hundred times.
    expect(million.seconds).toBeLessThan(40 * hundredThousand.seconds);
  });

  test("is what docs/host-figures.md says", () => {
    const page = readFileSync(join(__dirname, "../../../docs/host-figures.md"), "utf8");
    const written = page.split("\n").map((line) => line.replace(/ +/g, " "));
    for (const line of figuresTable(figures).slice(2)) expect(written).toContain(line);
  });
});
