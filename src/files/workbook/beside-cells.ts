import type { besideCellsMessages } from "../../messages/english/beside-cells";
import type { OpenedPackage } from "../package/opened-package";
import { sheetText } from "./sheet-part";
import { workbookParts } from "./workbook-parts";

/** What a workbook may hold that is no cell, no format of a cell, no rule and no note. */
export type BesideCells = keyof typeof besideCellsMessages extends `beside-${infer What}`
  ? What
  : never;

/** By what leads to it. */
const BY_RELATION: Readonly<Record<string, BesideCells>> = {
  chart: "chart",
  chartEx: "chart",
  image: "picture",
  pivotTable: "pivot table",
  slicer: "slicer",
  timeline: "slicer",
  oleObject: "embedded object",
  package: "embedded object",
  ctrlProp: "control",
  control: "control",
  diagramData: "diagram",
  threadedComment: "conversation",
  externalLink: "link to another workbook",
  vbaProject: "macro project",
};
const LINES_IN_CELLS = /<(?:[\w.-]+:)?sparkline>/g;
const RULES = /<(?:[\w.-]+:)?cfRule\b/g;
const SHAPES = /<(?:[\w.-]+:)?(?:sp|cxnSp)(?=[\s>])/g;

/** Counts what a workbook holds beside its cells. */
export async function besideCells(opened: OpenedPackage): Promise<Map<BesideCells, number>> {
  const counts = new Map<BesideCells, number>();
  const count = (what: BesideCells | undefined, times = 1) => {
    if (what && times > 0) counts.set(what, (counts.get(what) ?? 0) + times);
  };
  const { workbook, sheets } = await workbookParts(opened);
  for (const { kind } of await opened.relations(workbook)) count(BY_RELATION[kind]);
  count("hidden sheet", sheets.filter(({ hidden }) => hidden).length);
  for (const { part, cells } of sheets) {
    for (const { kind, target } of await opened.relations(part)) {
      count(BY_RELATION[kind]);
      if (kind !== "drawing" || !opened.has(target)) continue;
      for (const drawn of await opened.relations(target)) count(BY_RELATION[drawn.kind]);
      count("shape", matches(await opened.text(target), SHAPES));
    }
    if (!cells) continue;
    const { tail } = sheetText(await opened.text(part));
    count("line in a cell", matches(tail, LINES_IN_CELLS));
  }
  return counts;
}

/** Conditional formats of a sheet, those included that a reader does not know. */
export async function rulesOf(opened: OpenedPackage, part: string): Promise<number> {
  return matches(sheetText(await opened.text(part)).tail, RULES);
}

function matches(text: string, what: RegExp): number {
  return text.match(what)?.length ?? 0;
}
