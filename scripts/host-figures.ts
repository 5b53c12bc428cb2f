import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { startExcel } from "../tests/excel-client/excel-client";
import { figuresTable } from "../tests/hosts/excel/figures-table";
import { MEASURED_ROWS, measureHost, type HostFigures } from "../tests/hosts/excel/measure-host";

/* Measures the Excel host up to a million rows and writes docs/host-figures.md. */

const TEXT = `# What the add-in asks of Excel

Measured on an emulated workbook behind Microsoft's own client library for Excel, not in Excel itself: a sheet of 12 columns is
read, then one cell in a hundred is marked, hardly any two of them neighbours. A sync is one trip to Excel and back; objects are
what the client library holds of Excel's, all syncs together. On the web, Excel refuses requests and answers of more than 5 MB.

{table}

- The first sync of a reading finds the table and how decimals are written. The others fetch values, as many rows at a time as make
  about 2.5 MB; the first 40,000 cells go ahead to see how long the values are.
- An Excel table takes one sync more, to learn where it ends.
- Marking reads once more, in the request that marks, what was checked, or of a long table the rows to be marked.
- Marking takes two syncs, one more where rules with a formula or earlier marks stand on the sheet, and one more where notes,
  comments or merged cells have to be minded.
- Growth is linear: ten times the rows take about ten times the syncs and the time.

\`npm run host-figures\` measures again and writes this page; a test measures too and compares.
`;

async function main(): Promise<void> {
  const excel = startExcel();
  const figures: HostFigures[] = [];
  for (const rows of MEASURED_ROWS) {
    const measured = await measureHost(excel, rows);
    console.log(`${rows} rows: ${measured.seconds.toFixed(1)} s, the emulated Excel included`);
    figures.push(measured);
  }
  const page = TEXT.replace("{table}", figuresTable(figures).join("\n"));
  writeFileSync(join(__dirname, "../docs/host-figures.md"), page);
}

void main();
