import type { Words } from "../sentence";

type Count = Words<"count">;

/** What a workbook holds beside its cells, one or several. */
export const besideCellsMessages = {
  "beside-chart": ({ count }: Count) => (count === "1" ? "1 chart" : `${count} charts`),
  "beside-picture": ({ count }: Count) => (count === "1" ? "1 picture" : `${count} pictures`),
  "beside-shape": ({ count }: Count) => (count === "1" ? "1 shape" : `${count} shapes`),
  "beside-diagram": ({ count }: Count) => (count === "1" ? "1 diagram" : `${count} diagrams`),
  "beside-pivot table": ({ count }: Count) =>
    count === "1" ? "1 pivot table" : `${count} pivot tables`,
  "beside-slicer": ({ count }: Count) => (count === "1" ? "1 slicer" : `${count} slicers`),
  "beside-embedded object": ({ count }: Count) =>
    count === "1" ? "1 embedded object" : `${count} embedded objects`,
  "beside-control": ({ count }: Count) =>
    count === "1" ? "1 button or control" : `${count} buttons or controls`,
  "beside-conversation": ({ count }: Count) =>
    count === "1" ? "1 conversation about cells" : `${count} conversations about cells`,
  "beside-link to another workbook": ({ count }: Count) =>
    count === "1" ? "1 link to another workbook" : `${count} links to other workbooks`,
  "beside-macro project": ({ count }: Count) =>
    count === "1" ? "1 set of macros" : `${count} sets of macros`,
  "beside-hidden sheet": ({ count }: Count) =>
    count === "1" ? "1 hidden sheet" : `${count} hidden sheets`,
  "beside-line in a cell": ({ count }: Count) =>
    count === "1" ? "1 small chart in a cell" : `${count} small charts in cells`,
  "beside-conditional format": ({ count }: Count) =>
    count === "1" ? "1 conditional format" : `${count} conditional formats`,
} as const;
