import type { setupSheetMessages as english } from "../english/setup-sheet";
import type { SameSentences } from "../sentence";

/** What stands on the sheet that holds the setup. Every heading here is one that a setup is read by. */
export const setupSheetMessages: SameSentences<typeof english> = {
  "setup-sheet-title":
    "Se lee con cada revisión. Cámbiela a mano como quiera; sus notas y columnas propias se quedan como están.",
  "setup-heading-header": "Encabezado",
  "setup-heading-taken-for": "Tomado como",
  "setup-heading-unit": "Unidad",
  "setup-heading-setting": "Ajuste",
  "setup-heading-value": "Valor",
  "setup-heading-mix": "Mezcla",
  "setup-heading-target": "Objetivo",
  "setup-heading-tolerance": "Tolerancia",
  "setup-heading-low": "Mínimo",
  "setup-heading-high": "Máximo",
  "setup-heading-aggregate": "Agregado",
  "setup-heading-aggregate-size": "Tamaño del agregado",
  "setup-heading-exposure": "Exposición",
  "setup-heading-density-low": "Densidad mínima",
  "setup-heading-density-high": "Densidad máxima",
  "setup-heading-slump-low": "Revenimiento mínimo",
  "setup-heading-slump-high": "Revenimiento máximo",
  "setup-heading-temperature-low": "Temperatura mínima",
  "setup-heading-temperature-high": "Temperatura máxima",
  "setup-heading-source": "Fuente",
  "setup-scale-end": "Fin de la escala",
  "setup-dates-from": "Días contados desde",
  "setup-source-with-tolerance": ({ table, tolerance }) =>
    `${table}; ± ${tolerance} como es usual, de memoria`,
  "setup-not-ours": "no es nuestra",
  "setup-as-found": "como se encontró",
};
