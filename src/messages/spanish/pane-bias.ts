import type { paneBiasMessages as english } from "../english/pane-bias";
import type { SameSentences } from "../sentence";

/** What is said of who tests higher or lower than the others. */
export const paneBiasMessages: SameSentences<typeof english> = {
  "bias-heading": "Quién difiere",
  "bias-by": "Comparados por la columna",
  "bias-none":
    "Ninguna columna de la tabla revisada nombra quién o qué hizo las pruebas, como un técnico, un medidor o una planta, cada uno más de una vez.",
  "bias-nobody":
    "No hay a quién comparar: no hay dos con pruebas válidas de la misma mezcla, o solo uno tiene alguna.",
  "bias-hint":
    "La diferencia de cada uno con los demás en las mismas mezclas, solo pruebas válidas, con su error estándar a cada lado.",
  "bias-axis": "Diferencia con los demás, % de aire",
  "bias-read-off": "Diferencias en la gráfica, con las teclas de flecha",
  "bias-read-off-hint": "Señale una diferencia, o recórralas con las teclas de flecha.",
  "bias-line": ({ who, difference, error, tests }) =>
    `${who}: ${difference} %, error estándar ${error} %, pruebas: ${tests}.`,
  "bias-line-alone": ({ who, difference, tests }) =>
    `${who}: ${difference} %, pruebas: ${tests}. Son muy pocas para decir qué tan bien se conoce.`,
  "bias-not-compared": ({ who }) =>
    `${who}: nadie más probó la misma mezcla, así que no hay con qué comparar.`,
  "bias-told": ({ chance }) =>
    `Si nadie difiere, tanto ocurre por azar en ${chance} de los casos: investíguelo.`,
  "bias-not-told": ({ chance, needed }) =>
    `Si nadie difiere, tanto ocurre por azar en ${chance} de los casos. Para distinguir tal diferencia harían falta ${needed} pruebas de cada lado en las mismas mezclas.`,
  "bias-not-told-ever": ({ chance }) =>
    `Si nadie difiere, tanto ocurre por azar en ${chance} de los casos.`,
  "bias-basis":
    "Prueba t de Welch dentro de las mezclas. Una diferencia se distingue del azar por debajo de 5 %; lo que hace falta se calcula para notarla cuatro veces de cinco (aproximación normal, Guenther 1981). De veinte que no difieren, uno queda por debajo de 5 % de todos modos.",
  "bias-table": "Números de la gráfica",
  "bias-table-who": "Quién",
  "bias-table-tests": "Pruebas",
  "bias-table-difference": "Diferencia ± error estándar, %",
  "bias-table-chance": "Por azar",
  "bias-table-needed": "Necesarias",
  "bias-cut": ({ shown, all }) =>
    `La gráfica muestra los primeros ${shown} de ${all}; la tabla los tiene todos.`,
};
