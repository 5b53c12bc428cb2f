import type { paneMessages as english } from "../english/pane";
import type { SameSentences } from "../sentence";

/** What the task pane says and how its parts are labelled. */
export const paneMessages: SameSentences<typeof english> = {
  "pane-title": "Concreto fresco",
  "pane-version": ({ version }) => `Fresh Concrete Functions, versión ${version}`,
  "pane-pages": "Páginas del panel",
  "pane-page-check": "Revisión",
  "pane-page-test": "Esta prueba",
  "pane-page-trend": "Tendencia",
  "pane-page-report": "Informe",
  "pane-open-in-excel":
    "Abra este panel desde la cinta de Excel. Aquí no tiene una hoja con la que trabajar.",
  "pane-unexpected":
    "Sucedió algo que no estaba previsto. Sus celdas están como estaban; intente de nuevo.",

  "pane-blank-cells-zero":
    "En este Excel una celda en blanco llega a las funciones de la hoja como 0; por eso dicen de cada 0 que puede ser un blanco. Escriba ahí el 0 como texto ('0). La revisión de este panel lee las celdas por sí misma y no se ve afectada.",
  "pane-blank-cells-unknown":
    "No se sabe si las celdas en blanco llegan en blanco a las funciones de la hoja en este Excel; por eso dicen de cada 0 que puede ser un blanco. Escriba una vez, en una celda libre, =FRESH.BLANK.TEST de una celda en blanco; si da “blank”, queda resuelto. La revisión de este panel lee las celdas por sí misma y no se ve afectada.",

  "pane-check": "Revisar",
  "pane-progress": "Avance",
  "pane-stop": "Detener",
  "pane-stopped": "Detenido. La hoja no se cambió.",
  "pane-stopped-marking":
    "Detenido. Ninguna de las marcas nuevas está en la hoja; las anteriores pueden haberse quitado.",
  "pane-stopped-unmarking":
    "Detenido. Puede que queden algunas marcas nuestras; quite las marcas otra vez para retirar el resto.",
  "results-only-first": ({ shown, findings }) =>
    `La lista contiene los primeros ${shown} de ${findings} hallazgos. La línea de comandos los escribe todos (fresh-check, vea los documentos); o revise la tabla por partes.`,
  "pane-checking": "Revisando",
  "pane-reading": ({ rows }) => `Leyendo, ${rows} filas hasta ahora`,
  "pane-reading-column": "Leyendo",
  "pane-marking": "Marcando",
  "pane-unmarking": "Quitando las marcas",
  "pane-writing": "Escribiendo",
  "pane-checked": ({ address, tests, findings }) =>
    `Revisado: ${address}. Pruebas: ${tests}. Hallazgos: ${findings}.`,
  "pane-rows-are-no-tests":
    "La tabla tiene varias pruebas en una fila, o una fila para cada valor de una prueba.",
  "pane-forms": ({ forms }) =>
    forms === "1" ? "Un formulario en esta hoja." : `${forms} formularios en esta hoja.`,
  "pane-not-read-below": ({ from, to }) =>
    from === to
      ? `La fila ${from}, más abajo, no se leyó.`
      : `No se leyó lo que está más abajo, en las filas ${from} a ${to}. Si allí también hay pruebas, seleccione una de sus celdas y revise otra vez.`,
  "pane-columns-not-read": ({ from, to }) =>
    from === to
      ? `La columna ${from}, al lado, no se leyó.`
      : `No se leyó lo que está al lado, en las columnas ${from} a ${to}.`,
  "pane-not-read-above":
    "Las celdas encima de las seleccionadas contienen algo y no se leyeron, porque no estaban seleccionadas.",
  "pane-row-changed": ({ row }) =>
    `La fila ${row} contiene otra cosa que lo revisado. Revise de nuevo para ver su prueba.`,
  "pane-still-shown": ({ address }) =>
    `Lo que se muestra sigue siendo la revisión anterior de ${address}.`,
  "pane-checked-anew": ({ address }) =>
    `La hoja cambió después de la revisión, así que antes se revisó de nuevo ${address}.`,
  "pane-test-moved": ({ row, sample, now }) =>
    `Lo que era la fila ${row} ${inBrackets(sample)}ahora es la fila ${now}. Revise de nuevo para renovar la lista.`,
  "pane-test-edited": ({ row, sample, now }) =>
    `Lo que era la fila ${row} ${inBrackets(sample)}se editó después de la revisión y ahora es la fila ${now}. Revise de nuevo para renovar la lista.`,
  "pane-test-gone": ({ row, sample }) =>
    `Lo que se revisó en la fila ${row} ${inBrackets(sample)}ya no está en la tabla, o se editó tanto que no se puede encontrar. Revise de nuevo para renovar la lista.`,
  "pane-what-is-new": ({ fresh, gone }) =>
    `Hallazgos nuevos: ${fresh}. Ya no se encuentran: ${gone}.`,
  "tests-elsewhere":
    "En esta hoja no se encontraron pruebas. Otras hojas del libro sí tienen: elija una abajo.",
  "no-area": ({ typed }) =>
    `“${typed}” no es un área de celdas. Escriba sus esquinas, como A1:R40.`,
  "pane-copied": ({ findings }) => `Hallazgos copiados: ${findings}.`,
  "pane-not-copied":
    "Este programa no deja que el panel copie. Escriba una hoja de resultados y copie de ahí.",
  "pane-marks-are-older":
    "Las marcas de la hoja son de antes: revise con marcado para renovarlas, o quítelas.",

  "word-void": "anulada",
  "word-error": "error",
  "word-doubt": "duda",
  "word-note": "nota",
  "word-valid": "válida",
  "word-incomplete": "incompleta",
  "word-within": "dentro",
  "word-below": "por debajo",
  "word-above": "por encima",

  "pane-cautions": "Precauciones",
};

function inBrackets(sample: string): string {
  return sample === "" ? "" : `(${sample}) `;
}
