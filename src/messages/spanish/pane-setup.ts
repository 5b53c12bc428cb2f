import type { paneSetupMessages as english } from "../english/pane-setup";
import type { SameSentences } from "../sentence";

/** What the pane says of columns and of the setup that is kept in the workbook. */
export const paneSetupMessages: SameSentences<typeof english> = {
  "pane-columns-hint":
    "Como qué se toma cada una, y por qué. Elija otra cosa donde no sea correcto; la revisión lo usa enseguida.",
  "pane-say-columns":
    "No se encontraron lecturas del medidor. Diga abajo qué contienen estas columnas.",
  "pane-take-column": ({ header }) => `Como qué se toma “${header}”`,
  "pane-unit-of-column": ({ header }) => `Unidad de “${header}”`,
  "pane-unit-as-written": "como está",
  "pane-not-ours": "no es nuestra",
  "pane-as-found": "como se encontró",
  "pane-column-asked": "diga cuál",
  "pane-column-unknown": "no se lee",
  "pane-column-not-ours": "no se toca",
  "pane-column-empty": "vacía",
  "pane-sure-kept": "como usted dijo",
  "pane-sure": "seguro",
  "pane-fairly-sure": "bastante seguro",
  "pane-sure-not-read": "no se lee",
  "pane-header-not-alone":
    "Otra columna tiene el mismo encabezado, así que no puede guardarse nada de ella. Dé a cada una su propio encabezado.",
  "pane-keep-setup": "Guardar en el libro",
  "pane-not-kept-yet": ({ count, sheet }) =>
    `Sin guardar todavía: ${count}. Van en la hoja “${sheet}”.`,
  "pane-fields-likely": "Puede ser",
  "pane-fields-air-test": "La prueba de aire",
  "pane-fields-identity": "Qué prueba",
  "pane-fields-limits": "Aire especificado",
  "pane-fields-procedure": "Cómo se probó",
  "pane-fields-sampling": "Cuándo se muestreó",
  "pane-fields-delivery": "Carga y especímenes",
  "pane-fields-aggregate": "Agregado",
  "pane-fields-density": "Densidad y rendimiento",
  "pane-fields-slump": "Revenimiento, temperatura, clima",
  "pane-mixes": "Especificación por mezcla",
  "pane-mixes-counted": ({ mixes, limited }) =>
    `Mezclas en estas pruebas: ${mixes}. Con límites de aire en la configuración: ${limited}.`,
  "pane-mixes-hint": ({ sheet }) =>
    `Se escriben en la hoja “${sheet}”, donde usted puede dar los límites a mano. Lo que está ahí se queda.`,
  "pane-specified-air-from": "Aire especificado de",
  "pane-specified-air-none": "ninguna tabla, solo los nombres",
  "pane-exposure": "Exposición",
  "pane-aggregate-size": "Tamaño del agregado",
  "pane-add-mixes": "Escribir las mezclas en el libro",
  "pane-nothing-compared":
    "No se comparó nada con una especificación: no se leyó ningún límite de la hoja, de su configuración ni de este panel.",
  "setup-sheet-not-ours": ({ sheet }) =>
    `La hoja “${sheet}” no tiene ninguna tabla de configuración, así que no se lee ni se escribe nada en ella. Póngale otro nombre y la configuración podrá guardarse en una hoja propia.`,
  "setup-sheet-renamed": ({ sheet, now }) =>
    `La hoja “${sheet}” se llama ahora “${now}”, así que su configuración no se aplica. Llámela otra vez “${sheet}” para que se aplique.`,
  "setup-sheet-gone": ({ sheet }) =>
    `La hoja “${sheet}” ya no está en el libro, así que su configuración no se aplica.`,
  "setup-sheet-no-unit":
    "La tabla de columnas de la configuración no tiene columna para la unidad. Encabece una con Unidad y guárdelo otra vez.",
  "setup-days-differ": ({ setup, workbook }) =>
    `La configuración dice que los días se cuentan desde ${setup}, y el libro los cuenta desde ${workbook}. Las fechas se leyeron como las cuenta el libro. Corrija la configuración.`,
  "pane-setup-kept": ({ sheet, count }) => `Guardado en la hoja “${sheet}”: ${count}.`,
  "pane-mixes-added": ({ sheet, added, filled }) =>
    `En la hoja “${sheet}”, mezclas agregadas: ${added}; con aire especificado: ${filled}.`,
  "pane-mix-not-filled": ({ mix, why }) => `La mezcla “${mix}” quedó sin aire especificado. ${why}`,
  "pane-mixes-more-not-filled": ({ count }) => `Lo mismo pasa con ${count} más.`,
  "pane-mixes-no-columns":
    "La tabla de mezclas de la configuración no tiene columnas Objetivo y Tolerancia, o Mínimo, para el aire especificado. Encabece algunas así.",
  "pane-mixes-all-there": "Todas las mezclas de estas pruebas están ya en la configuración.",
  "pane-no-mixes": "En estas pruebas no se lee ninguna mezcla.",
};
