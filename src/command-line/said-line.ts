import { notLookedAtSentence } from "../fieldsheet/not-looked-at";
import { inLine } from "../messages/pane-catalogue";
import type { Said } from "./said";

/** What is said as one JSON object. */
export function jsonLine(said: Said): string {
  return JSON.stringify(said);
}

/** What is said as a line for people: where, how grave, what. */
export function plainLine(said: Said): string {
  const where = [said.file, placeOf(said)].filter((part) => part !== "").join(": ");
  switch (said.kind) {
    case "finding":
      return inLine("line-finding", {
        where,
        weight: said.weight,
        message: said.message,
        sample: said.sample,
      });
    case "test":
      return inLine("line-test", {
        ...{ where, sample: said.sample, state: said.test },
        air: said.air ?? "",
        specification: said.specification ?? "",
      });
    case "sheet":
      return inLine("line-sheet", {
        where,
        ...said,
        notLookedAt: notLookedAtSentence(said.notLookedAt) ?? "",
      });
    case "not read":
      return inLine("line-not-read", { where, message: said.message });
  }
}

function placeOf(said: Said): string {
  const cell = said.kind === "finding" ? said.cell : said.kind === "sheet" ? said.area : undefined;
  const at = cell ?? (said.row === undefined ? "" : inLine("line-row", { row: said.row }));
  if (said.sheet === undefined) return at;
  return at === "" ? said.sheet : `${said.sheet}!${at}`;
}
