import type { workbenchMessages as english } from "../english/workbench";
import type { SameSentences } from "../sentence";

/** Sentences of the workbench, the page with a spreadsheet of its own. */
export const workbenchMessages: SameSentences<typeof english> = {
  "function-failed":
    "La función se detuvo por una razón que no conoce. Informe por favor la fórmula y lo que contienen sus celdas.",
  "spreadsheet-failed":
    "La hoja de cálculo no hizo esto. Salga de la celda que se está editando e intente de nuevo.",
  "arguments-too-few": ({ name, needed }) =>
    `${name} necesita más: ${needed}. Indique un valor o una celda para cada uno.`,
  "arguments-too-many": ({ name, count, taken }) =>
    `${name} recibe ${count} valores y solo acepta estos: ${taken}.`,
  "changes-would-be-lost":
    "El libro se cambió y los cambios no están guardados. ¿Abrir otro y perderlos?",
  "workbench-not-started":
    "El banco de trabajo no pudo arrancar, porque le falta una parte. Ejecute otra vez npm start y cargue de nuevo la página.",
  "cell-error": ({ error }) => `La celda contiene el error ${error}; su fórmula no dice nada más.`,
  "cell-error-#NAME?":
    "Un nombre de la fórmula no se conoce aquí. Revise cómo está escrito; las funciones de este banco de trabajo empiezan con FRESH.",
  "cell-error-#SPILL!":
    "El resultado necesita más celdas de las que hay libres abajo y al lado. Vacíe las celdas que estorban.",
  "cell-error-#BUSY!": "El resultado todavía se está calculando.",
  "cell-error-#REF!": "La fórmula nombra celdas que ya no existen.",
  "cell-error-#DIV/0!": "La fórmula divide entre cero o entre una celda en blanco.",
  "cell-error-#N/A": "No está un valor que la fórmula busca.",
  "cell-says-hint": "Una celda que muestra un error dice aquí por qué, una vez seleccionada.",

  "page-title": "Banco de trabajo de concreto fresco",
  "page-lead":
    "Escriba `=FRESH.` en una celda para calcular, o revise en el panel una hoja de pruebas de campo. Los archivos permanecen en este navegador; no se envía nada. `F6` pasa de los archivos a la hoja y al panel.",
  "page-skip-to-sheet": "Ir a la hoja de cálculo",
  "page-skip-to-pane": "Ir al panel",
  "page-files": "Archivos",
  "page-open-file": "Abrir un archivo CSV o XLSX…",
  "page-save-file": "Guardar como XLSX",
  "page-open-sample": "Abrir el ejemplo",
  "page-open-empty": "Empezar con una hoja vacía",
  "page-sheet": "Hoja de cálculo",
  "page-sheet-loading": "Se está cargando la hoja de cálculo…",
  "page-pane": "Panel de tareas",
  "page-pane-loading":
    "El panel revisa registros de pruebas de concreto fresco: qué está mal, dónde, y qué hacer.",
  "sample-not-loaded":
    "No se pudo cargar el ejemplo, así que la hoja está vacía. Abra un archivo suyo, o cargue de nuevo la página.",
};
