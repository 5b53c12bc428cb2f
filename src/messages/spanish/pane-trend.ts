import type { paneTrendMessages as english } from "../english/pane-trend";
import type { SameSentences } from "../sentence";

/** What the page about the trend says. */
export const paneTrendMessages: SameSentences<typeof english> = {
  "trend-heading": "Tendencia",
  "trend-check-first":
    "Presione Revisar: las pruebas válidas forman la tendencia. O seleccione una columna de contenidos de aire y tómela.",
  "trend-take-column": "Tomar la columna seleccionada",
  "trend-take-table": "Tomar la tabla revisada",
  "trend-one-column":
    "La tendencia necesita una columna de contenidos de aire. Seleccione sus celdas, dos filas o más, e intente de nuevo.",
  "trend-cell-changed": ({ held }) =>
    `Esta celda tenía ${held} cuando se tomó la columna y ahora tiene otra cosa. Tome la columna otra vez para verla como está.`,
  "trend-unreadable": ({ cells }) => `Se omitieron, porque no contienen un número: ${cells}.`,
  "trend-by": "Pruebas juntas",
  "trend-by-all": "todas",
  "trend-by-mix": "por mezcla",
  "trend-by-day": "por día",
  "trend-by-mix-and-day": "por mezcla y día",
  "trend-group": "Se muestra",
  "trend-all-tests": "todas las pruebas",
  "trend-no-mix": "sin mezcla",
  "trend-no-day": "sin día",
  "trend-test-number": ({ number }) => `prueba ${number}`,
  "trend-title": ({ group, address }) => `Contenido de aire, ${group}, ${address}`,
  "trend-axis-air": "Contenido de aire, %",
  "trend-axis-tests": "Pruebas en el orden de la hoja",
  "trend-key-result": "resultado",
  "trend-key-columns": ({ count }) => `del menor al mayor de ${count} resultados, y su media`,
  "trend-key-mean": "media",
  "trend-key-limits": "límites de control",
  "trend-key-specification": "especificación",
  "trend-key-above": "por encima",
  "trend-key-below": "por debajo",
  "trend-key-signal": "señal",
  "trend-read-off": "Resultado en el gráfico, con las flechas",
  "trend-read-off-hint":
    "Señale un resultado, o avance con las flechas. Entrar o un clic lleva a su fila.",
  "trend-point": ({ name, number, of, air }) => `${name} (${number} de ${of}): ${air} %`,
  "trend-point-compared": ({ what, verdict }) => `${what}. ${verdict}.`,
  "trend-point-signals": ({ what, signals }) => `${what} ${signals}.`,
  "trend-few": ({ points, enough }) =>
    `Estos límites de control se basan en solo ${points} resultados. Con menos de ${enough} (práctica común) todavía pueden moverse bastante: no actúe solo por ellos.`,
  "trend-table-cut": ({ shown, all }) =>
    `Los primeros ${shown} de ${all}. Los demás están en la propia hoja, y el gráfico se traza con todos.`,
  "trend-signals-cut": ({ left }) => `Y otras ${left} pruebas con una señal.`,
  "trend-points": ({ points }) => `Resultados: ${points}.`,
  "trend-left-out": ({ voids, incomplete }) =>
    `Se omitieron: ${voids} anuladas y ${incomplete} incompletas.`,
  "trend-limits": ({ mean, lower, upper }) =>
    `Media ${mean} %, límites de control de ${lower} % a ${upper} %.`,
  "trend-specification": ({ low, high }) => `Especificación de ${low} % a ${high} %.`,
  "trend-specification-low": ({ low }) => `Especificación: al menos ${low} %.`,
  "trend-specification-high": ({ high }) => `Especificación: ${high} % como máximo.`,
  "trend-specifications-differ":
    "Las pruebas tienen especificaciones distintas; la franja es la de cada prueba.",
  "trend-outside": ({ outside }) => `Fuera de la especificación: ${outside}.`,
  "trend-signals-count": ({ signals }) => `Pruebas con una señal: ${signals}.`,
  "trend-no-signals": "Sin señales.",
  "trend-signals": "Señales",
  "trend-table": "Los números en una tabla",
  "trend-table-test": "Prueba",
  "trend-table-air": "Aire, %",
  "trend-table-spec": "Especificación",
  "trend-table-signals": "Señales",
  "trend-save-png": "Guardar como imagen",
  "trend-save-svg": "Guardar como dibujo (SVG)",
  "trend-add-chart": "Poner un gráfico en el libro",
  "trend-chart-added": ({ sheet }) => `El gráfico está en la hoja “${sheet}”.`,
  "trend-sheet-name": "Tendencia",
  "trend-line-air": "Aire, %",
  "trend-line-mean": "Media",
  "trend-line-lower": "Límite de control inferior",
  "trend-line-upper": "Límite de control superior",
  "trend-line-low": "Límite inferior",
  "trend-line-high": "Límite superior",
};
