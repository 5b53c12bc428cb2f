import type { HostFigures } from "./measure-host";

/** The lines of the table in docs/host-figures.md; without times, which differ from machine to machine. */
export function figuresTable(figures: readonly HostFigures[]): string[] {
  return [
    "| rows | syncs to read | cells marked | syncs to mark | objects | largest request | largest answer |",
    "| ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    ...figures.map(figuresLine),
  ];
}

/** One line of it. */
export function figuresLine(one: HostFigures): string {
  const cells = [
    grouped(one.rows),
    one.readSyncs,
    grouped(one.marks),
    one.markSyncs,
    grouped(one.objects),
    megabytes(one.largestRequest),
    megabytes(one.largestResponse),
  ];
  return `| ${cells.join(" | ")} |`;
}

function grouped(number: number): string {
  return number.toLocaleString("en-US");
}

function megabytes(bytes: number): string {
  return `${(bytes / 1_000_000).toFixed(2)} MB`;
}
