import type { setupMessages as english } from "../english/setup";
import type { SameSentences } from "../sentence";

/** What is said of a setup: of its lines that cannot be used, and where it does not fit a sheet. */
export const setupMessages: SameSentences<typeof english> = {
  "setup-without-headings":
    "No se aplicó nada de la configuración: ninguna de sus líneas lleva los encabezados Header y Taken for, Setting y Value, o Mix y lo que se especifica para ella, como Low y High.",
  "setup-line-above-headings": ({ line }) =>
    `configuración, línea ${line}: está arriba de los encabezados y no se leyó. Muévala debajo de ellos.`,
  "setup-column-not-used": ({ line, heading }) =>
    `configuración, línea ${line}: con la columna “${heading}” no se hace nada.`,
  "setup-no-header": ({ line }) =>
    `configuración, línea ${line}: no nombra ningún encabezado, así que no se aplicó. Escriba el encabezado tal como está en la hoja.`,
  "setup-nothing-taken-for": ({ line, header }) =>
    `configuración, línea ${line}: no dice cómo se toma “${header}”, así que no se aplicó. Escriba el nombre de un campo, o "not ours".`,
  "setup-field-unknown": ({ line, header, field }) =>
    `configuración, línea ${line}: “${field}”, como debe tomarse “${header}”, no es un campo que se conozca aquí, así que no se aplicó. Escriba el nombre de un campo, como "first reading", o "not ours".`,
  "setup-unit-unknown": ({ line, header, unit }) =>
    `configuración, línea ${line}: “${unit}” no es una unidad que se conozca aquí, así que nada se aplicó a “${header}”.`,
  "setup-unit-does-not-fit": ({ line, unit, field }) =>
    `configuración, línea ${line}: ${field} no se da en ${unit}, así que la línea no se aplicó. Corrija la unidad o cómo se toma la columna.`,
  "setup-header-twice": ({ line, header, before }) =>
    `configuración, línea ${line}: la línea ${before} dice otra cosa de “${header}”, así que ninguna se aplicó. Deje una de las dos.`,
  "setup-no-mix": ({ line }) =>
    `configuración, línea ${line}: no nombra ninguna mezcla, así que no se aplicó. Escriba la mezcla tal como está en la hoja.`,
  "setup-target-alone": ({ line, heading, target }) =>
    `configuración, línea ${line}, ${heading}: ${target} por sí solo no es un límite, así que la línea no se aplicó. Indique también la tolerancia, o un límite inferior y uno superior.`,
  "setup-tolerance-alone": ({ line, heading }) =>
    `configuración, línea ${line}, ${heading}: no se dice alrededor de qué, así que la línea no se aplicó. Indique también el objetivo.`,
  "setup-value-unreadable": ({ line, heading, why }) =>
    `configuración, línea ${line}, ${heading}: la línea no se aplicó. ${why}`,
  "setup-units-differ": ({ line, heading, one, other }) =>
    `configuración, línea ${line}, ${heading}: un límite está en ${one} y el otro en ${other}, así que la línea no se aplicó. Indique ambos en la misma unidad.`,
  "setup-limits-crossed": ({ line, heading, low, high }) =>
    `configuración, línea ${line}, ${heading}: el límite inferior, ${low}, es mayor que el superior, ${high}, así que la línea no se aplicó. Revise ambos.`,
  "setup-no-setting": ({ line }) =>
    `configuración, línea ${line}: no nombra ningún ajuste, así que no se aplicó.`,
  "setup-setting-unknown": ({ line, setting }) =>
    `configuración, línea ${line}: “${setting}” no es un ajuste que se conozca aquí, así que no se aplicó. Los hay estos: "end of the scale", "days counted from", "delivery standard", "time allowed for discharge", "revolutions allowed", "aggregate", "aggregate size".`,
  "setup-setting-twice": ({ line, before }) =>
    `configuración, línea ${line}: la línea ${before} le da al mismo ajuste otro valor, así que ninguna se aplicó. Deje una de las dos.`,
  "setup-no-scale-end": ({ line, value, least, most }) =>
    `configuración, línea ${line}: la escala de ningún medidor termina en “${value}”, así que no se aplicó. Indique el último número de la escala en %, de ${least} a ${most}.`,
  "setup-no-date-system": ({ line, value }) =>
    `configuración, línea ${line}: ningún libro cuenta sus días desde “${value}”, así que no se aplicó. Escriba 1900 o 1904.`,
  "setup-mix-twice": ({ line, mix, before }) =>
    `configuración, línea ${line}: la línea ${before} dice otra cosa de la mezcla “${mix}”, así que ninguna se aplicó. Deje una de las dos.`,
  "setup-header-missing": ({ header }) =>
    `la configuración no se aplicó a “${header}”: nada de lo que se lee en esta hoja tiene ese encabezado.`,
  "setup-header-of-several": ({ header }) =>
    `la configuración no se aplicó a “${header}”: varias columnas de esta hoja tienen ese encabezado. Dé a cada una el suyo.`,
  "setup-mixes-missing": ({ mixes }) =>
    `La configuración no da límites de aire para la mezcla ${mixes}, y la hoja no los tiene, así que estas pruebas no se compararon con nada. Indíquelos en una línea para ella en la configuración.`,
  "setup-no-mix-column":
    "La configuración da especificaciones por mezcla, y ninguna columna de esta hoja se lee como la mezcla, así que no se aplicaron. Encabece una con Mezcla.",
  "setup-cannot-compare": ({ mix, field, value, limit }) =>
    `No se comparó con la configuración este dato de la mezcla “${mix}”: ${field}. No se puede saber si ${value} en la hoja y ${limit} en la configuración están en la misma unidad. Escriba la unidad con ambos, en los encabezados o en las celdas.`,
};
