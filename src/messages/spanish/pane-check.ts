import type { paneCheckMessages as english } from "../english/pane-check";
import type { SameSentences } from "../sentence";

/** What the page about the check says. */
export const paneCheckMessages: SameSentences<typeof english> = {
  "pane-filter": "Mostrar los hallazgos por su peso",
  "pane-findings": "Hallazgos",
  "pane-findings-keys":
    "Haga clic en un hallazgo para ir a su celda, o muévase con las flechas y presione Entrar.",
  "pane-nothing-found": "No se encontró nada en lo que se revisó.",
  "pane-group-by": "Juntos por",
  "pane-group-by-test": "prueba",
  "pane-group-by-rule": "regla",
  "pane-sort-by": "Primero va",
  "pane-sort-by-row": "la fila de arriba",
  "pane-sort-by-weight": "lo más grave",
  "pane-copy": "Copiar la lista",
  "pane-new": "nuevo",
  "pane-explanations": "Qué puede haber detrás:",
  "pane-group-test": ({ row, sample }) => `Fila ${row}, ${sample}`,
  "pane-group-test-state": ({ test, state }) => `${test}: ${state}`,
  "pane-group-rule": ({ rule, count }) => `${rule}: ${count}`,

  "pane-tests-counted": ({ tests }) => `Pruebas: ${tests}`,
  "pane-against-specification": "Frente a la especificación",
  "pane-findings-counted": ({ findings }) => `Hallazgos: ${findings}`,
  "pane-not-checked": "No se revisó",
  "pane-not-checked-nothing": "La hoja registra todo lo que pide el método.",
  "pane-not-checked-others": ({ count }) => `Tampoco se registra: ${count}`,

  "pane-purpose": "Pruebas volumétricas de aire: ASTM C173, AASHTO T 196",
  "pane-begin":
    "Presione Revisar. Encuentra las pruebas de la hoja, dice qué está mal y no toca sus celdas.",
  "pane-area-checked": ({ address }) => `Revisado: ${address}`,
  "pane-area-change": "Revisar otras celdas",
  "pane-area": "Celdas, con sus encabezados",
  "pane-area-check": "Revisar estas",
  "pane-area-selection": "Revisar las celdas seleccionadas",
  "pane-sheets-with-tests": "Hojas con pruebas",
  "pane-check-sheet": ({ sheet }) => `Revisar “${sheet}”`,
  "pane-more": "Más",
  "pane-whole-sheet": "toda la hoja",
  "pane-row": ({ row }) => `fila ${row}`,

  "pane-columns": ({ recognised, others }) => `Columnas: ${recognised} reconocidas, ${others} no`,

  "pane-limits": "Especificación",
  "pane-limits-hint":
    "Para pruebas de las que ni la hoja ni su configuración dan límites. Lo que dice la hoja va primero.",
  "pane-low": "Límite inferior, %",
  "pane-high": "Límite superior, %",
  "pane-compare": "Comparar",

  "pane-in-the-sheet": "En la hoja",
  "pane-mark-found": "Marcar lo que se encuentre",
  "pane-with-notes": "Escribir una nota junto a cada marca",
  "pane-unmark": "Quitar las marcas",
  "pane-write-results": "Escribir una hoja de resultados",
  "pane-live": "Revisar de nuevo después de cada cambio",
  "pane-marked": ({ cells, notes }) => `Celdas marcadas: ${cells}. Con nota: ${notes}.`,
  "pane-marks-kept-of": ({ addresses }) =>
    `Entre ellas están las marcas de ${addresses}: allí no cambió nada desde entonces.`,
  "pane-marks-gone-of": ({ addresses }) =>
    `Se quitaron las marcas anteriores de ${addresses}, porque ahora hay allí otra cosa: revise de nuevo esas celdas.`,
  "pane-unmarked": ({ cells, notes }) => `Marcas quitadas: ${cells}. Notas quitadas: ${notes}.`,
  "pane-results-sheet-name": "Hallazgos",
  "pane-results-written": ({ sheet }) => `Los resultados están en la hoja “${sheet}”.`,
};
