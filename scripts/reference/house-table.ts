import order from "../../build/import-order.json";
import { table } from "./markdown";

const HEADING = "## The house\n\n";

/** DEVELOPERS.md with the table of folders and arrows as build/import-order.json holds them. */
export function withHouseTable(page: string): string {
  const from = page.indexOf(HEADING) + HEADING.length;
  const to = page.indexOf("\n\n", from);
  return page.slice(0, from) + houseTable() + page.slice(to);
}

function houseTable(): string {
  return table(
    ["layer", "folder", "holds", "may import"],
    Object.entries(order).map(([layer, { folder, holds, mayImport }]) => [
      layer,
      `\`${folder}\``,
      holds,
      mayImport.join(", ") || "nothing",
    ]),
  );
}
