import type { besideCellsMessages as english } from "../english/beside-cells";
import type { SameSentences } from "../sentence";

/** What a workbook holds beside its cells, one or several. */
export const besideCellsMessages: SameSentences<typeof english> = {
  "beside-chart": ({ count }) => (count === "1" ? "1 gráfico" : `${count} gráficos`),
  "beside-picture": ({ count }) => (count === "1" ? "1 imagen" : `${count} imágenes`),
  "beside-shape": ({ count }) => (count === "1" ? "1 forma" : `${count} formas`),
  "beside-diagram": ({ count }) => (count === "1" ? "1 diagrama" : `${count} diagramas`),
  "beside-pivot table": ({ count }) =>
    count === "1" ? "1 tabla dinámica" : `${count} tablas dinámicas`,
  "beside-slicer": ({ count }) =>
    count === "1" ? "1 segmentación de datos" : `${count} segmentaciones de datos`,
  "beside-embedded object": ({ count }) =>
    count === "1" ? "1 objeto incrustado" : `${count} objetos incrustados`,
  "beside-control": ({ count }) =>
    count === "1" ? "1 botón o control" : `${count} botones o controles`,
  "beside-conversation": ({ count }) =>
    count === "1" ? "1 conversación sobre celdas" : `${count} conversaciones sobre celdas`,
  "beside-link to another workbook": ({ count }) =>
    count === "1" ? "1 vínculo a otro libro" : `${count} vínculos a otros libros`,
  "beside-macro project": ({ count }) =>
    count === "1" ? "1 conjunto de macros" : `${count} conjuntos de macros`,
  "beside-hidden sheet": ({ count }) =>
    count === "1" ? "1 hoja oculta" : `${count} hojas ocultas`,
  "beside-line in a cell": ({ count }) =>
    count === "1" ? "1 minigráfico en una celda" : `${count} minigráficos en celdas`,
  "beside-conditional format": ({ count }) =>
    count === "1" ? "1 formato condicional" : `${count} formatos condicionales`,
};
