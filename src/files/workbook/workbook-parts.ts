import { Problem } from "../../measure/problem";
import type { OpenedPackage } from "../package/opened-package";
import { childrenOf, rootElement } from "../package/xml";

/** A sheet of a workbook and the part that holds it. */
export interface SheetPart {
  readonly name: string;
  readonly part: string;
  readonly hidden: boolean;
  /** Not a sheet of cells: a chart or dialog on a sheet of its own. */
  readonly cells: boolean;
}

/** Where a workbook keeps what. */
export interface WorkbookParts {
  readonly workbook: string;
  readonly styles?: string;
  readonly sheets: readonly SheetPart[];
}

/** Finds the parts of a workbook by what leads to them. @throws Problem `file-damaged`. */
export async function workbookParts(opened: OpenedPackage): Promise<WorkbookParts> {
  const workbook = (await opened.relations("")).find(({ kind }) => kind === "officeDocument");
  if (!workbook) throw new Problem("file-damaged");
  const xml = await opened.text(workbook.target);
  const relations = await opened.relations(workbook.target);
  const root = rootElement(xml);
  const list = root && childrenOf(xml, root).find(({ name }) => name === "sheets");
  if (!list) throw new Problem("file-damaged", { part: workbook.target });
  const sheets = childrenOf(xml, list).map(({ attributes }) => {
    const id = Object.entries(attributes).find(([name]) => /^\w+:id$/.test(name))?.[1];
    const relation = relations.find((each) => each.id === id);
    if (!relation || !opened.has(relation.target))
      throw new Problem("file-damaged", { part: relation?.target ?? workbook.target });
    return {
      name: attributes.name ?? "",
      part: relation.target,
      hidden: (attributes.state ?? "visible") !== "visible",
      cells: relation.kind === "worksheet",
    };
  });
  const styles = relations.find(({ kind }) => kind === "styles")?.target;
  return { workbook: workbook.target, styles, sheets };
}
