/** What a workbook holds beside its cells: the word for one and for several. */
export const besideCellsWords = {
  chart: ["chart", "charts"],
  picture: ["picture", "pictures"],
  shape: ["shape", "shapes"],
  diagram: ["diagram", "diagrams"],
  "pivot table": ["pivot table", "pivot tables"],
  slicer: ["slicer", "slicers"],
  "embedded object": ["embedded object", "embedded objects"],
  control: ["button or control", "buttons or controls"],
  conversation: ["conversation about cells", "conversations about cells"],
  "link to another workbook": ["link to another workbook", "links to other workbooks"],
  "macro project": ["set of macros", "sets of macros"],
  "hidden sheet": ["hidden sheet", "hidden sheets"],
  "line in a cell": ["small chart in a cell", "small charts in cells"],
  "conditional format": ["conditional format", "conditional formats"],
} as const;

/** "2 charts, 1 picture". */
export function countedBesideCells(
  counts: Iterable<readonly [what: keyof typeof besideCellsWords, count: number]>,
): string {
  return [...counts]
    .map(([what, count]) => `${count} ${besideCellsWords[what][count === 1 ? 0 : 1]}`)
    .join(", ");
}
