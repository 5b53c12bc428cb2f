import type { paneSetupMessages as english } from "../english/pane-setup";
import type { SameSentences } from "../sentence";

/** What the pane says of columns and of the setup that is kept in the workbook. */
export const paneSetupMessages: SameSentences<typeof english> = {
  "setup-sheet-not-ours": ({ sheet }) =>
    `La hoja “${sheet}” no tiene ninguna tabla de configuración, así que no se lee ni se escribe nada en ella. Póngale otro nombre y la configuración podrá guardarse en una hoja propia.`,
  "setup-sheet-renamed": ({ sheet, now }) =>
    `La hoja “${sheet}” se llama ahora “${now}”, así que su configuración no se aplica. Llámela otra vez “${sheet}” para que se aplique.`,
  "setup-sheet-gone": ({ sheet }) =>
    `La hoja “${sheet}” ya no está en el libro, así que su configuración no se aplica.`,
  "setup-sheet-no-unit":
    "La tabla de columnas de la configuración no tiene columna para la unidad. Encabece una con Unidad y guárdelo otra vez.",
  "setup-days-differ": ({ setup, workbook }) =>
    `La configuración dice que los días se cuentan desde ${setup}, y el libro los cuenta desde ${workbook}. Las fechas se leyeron como dice la configuración.`,
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
