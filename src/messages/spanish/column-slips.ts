import type { columnSlipMessages as english } from "../english/column-slips";
import type { SameSentences } from "../sentence";

const mend = "Corrija la fórmula de la columna, o vea cómo se calculó.";

/** Sentences about a slip that a whole column makes, as a template with a wrong formula does. */
export const columnSlipMessages: SameSentences<typeof english> = {
  "column-correction-forgotten": ({ rows, of }, n) =>
    `${rows} de ${of} filas con alcohol que corregir, desde ${n("2.5")} pt (40 oz, ${n("1.2")} L), omiten la corrección. ${mend}`,
  "column-correction-added": ({ rows, of }, n) =>
    `${rows} de ${of} filas con alcohol que corregir, desde ${n("2.5")} pt (40 oz, ${n("1.2")} L), suman la corrección, que se debe restar. ${mend}`,
  "column-factor-subtracted": ({ rows, of }) =>
    `${rows} de ${of} filas con factor de corrección por agregado lo restan. Ese factor es solo del método de presión. ${mend}`,
  "column-cups-forgotten": ({ rows, of }) =>
    `${rows} de ${of} filas con vasos calibrados los omiten. ${mend}`,
  "column-cups-counted-twice": ({ rows, of }) =>
    `${rows} de ${of} filas con vasos calibrados los suman dos veces. ${mend}`,
  "column-cups-subtracted": ({ rows, of }) =>
    `${rows} de ${of} filas con vasos calibrados los restan. ${mend}`,
  "column-first-reading-used": ({ rows, of }) =>
    `${rows} de ${of} filas cuyas lecturas difieren toman una lectura anterior en lugar de la final. ${mend}`,
  "column-readings-averaged": ({ rows, of }) =>
    `${rows} de ${of} filas cuyas lecturas difieren las promedian; solo cuenta la lectura final. ${mend}`,
  "column-rounded-otherwise": ({ rows, of }, n) =>
    `${rows} de ${of} filas cuyo resultado cae entre dos incrementos no se redondean al ${n("0.25")} % más cercano, con las mitades al incremento par. ${mend}`,
};
