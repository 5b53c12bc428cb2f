import { filled, joined, type Sentence, type Words } from "../../src/messages/sentence";

/** First line of every page that is written by `npm run reference`. */
export const WRITTEN_BY =
  "<!-- Written by npm run reference from the sources. Change those, not this page. -->";

/** A page from its parts, with a blank line between them. */
export function page(...parts: readonly string[]): string {
  return `${[WRITTEN_BY, ...parts].join("\n\n")}\n`;
}

/** A table with its columns aligned. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const lines = [head, ...rows].map((cells) => cells.map((cell) => cell.replaceAll("|", "\\|")));
  const widths = head.map((_, i) => Math.max(3, ...lines.map((cells) => cells[i]!.length)));
  const written = (cells: readonly string[]) =>
    `| ${cells.map((cell, i) => cell.padEnd(widths[i]!)).join(" | ")} |`;
  const rule = `| ${widths.map((width) => "-".repeat(width)).join(" | ")} |`;
  return [written(lines[0]!), rule, ...lines.slice(1).map(written)].join("\n");
}

/** A sentence of the catalogue as a reader sees it: "…" stands where a value is put in. */
export function sentence(template: Sentence): string {
  const blanks = new Proxy({}, { get: () => "…" }) as Words;
  return joined("", filled(template, blanks));
}
