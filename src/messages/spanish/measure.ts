import type { measureMessages as english } from "../english/measure";
import type { SameSentences } from "../sentence";

/** Sentences about single values. */
export const measureMessages: SameSentences<typeof english> = {
  "amount-in-unit": ({ amount, unit }) => `${amount} ${unit}`,
  "from-to": ({ from, to }) => `${from} a ${to}`,
  "more-than": ({ value }) => `más de ${value}`,
  "not-a-number": ({ value }, n) =>
    `“${value}” no es un número. Escriba un número, por ejemplo ${n("5.25")}.`,
  "comma-is-unclear": ({ value, read }) =>
    `“${value}” se puede leer de dos maneras. Escriba ${read} si la coma es decimal.`,
  "point-is-unclear": ({ value, whole, read }) =>
    `“${value}” se puede leer de dos maneras. Escriba ${whole} si el punto separa los miles, ${read} si es decimal.`,
  "cell-error": ({ value }) => `la celda contiene el error ${value}. Corrija primero esa celda.`,
  "duration-as-clock": ({ value, clock }, n) =>
    `${value} es lo que una hoja de cálculo hace de ${clock}, que toma por una hora del día. Escriba los minutos como número, por ejemplo ${n("7.5")}, o como texto, por ejemplo 7 min 30 s.`,
  "minutes-as-clock": ({ value, clock }, n) =>
    `${value} es lo que una hoja de cálculo hace de ${clock}, que toma por una hora del día. Indique los minutos como número, por ejemplo ${n("7.5")}.`,
  "percent-as-share": ({ value, percent }) =>
    `${value} parece ser ${percent} % en una celda con formato de porcentaje. Escriba ${percent} en una celda con formato de número.`,
  "may-sum-up":
    "nada en la fila nombra una prueba, y cada número es el total o el promedio de los de arriba. Empiece la fila con “Total” o “Promedio”, o nombre su prueba.",
  "zero-or-blank":
    'la celda es 0 o está en blanco: este Excel puede entregar una celda en blanco como 0. Escriba el 0 como texto (\'0 en una celda, "0" en una fórmula), o pruebe =FRESH.BLANK.TEST con una celda en blanco, que debe dar “blank”.',
  "not-a-blank-cell": ({ value }) => `contiene “${value}”. Señale una celda que esté en blanco.`,
  "step-not-positive": ({ value }) =>
    `${value} no es un incremento de redondeo. Indique un número mayor que 0, o 0 para no redondear.`,
  "step-not-reported": ({ value, least, most }) =>
    `ningún contenido de aire se informa en pasos de ${value} %. Indique un paso de ${least} a ${most}, o 0 para no redondear.`,
  "result-beyond-a-cell":
    "El resultado es mayor de lo que cabe en una celda. Busque un número demasiado grande o demasiado pequeño.",
  "argument-missing": "no se dio nada. Señale una celda que contenga un valor.",
  "blank-among-others":
    "la celda está en blanco, y un blanco no es un cero. Escriba la cantidad, o 0 si no hubo.",
  "sizes-differ": ({ rows, columns, otherRows, otherColumns }) =>
    `el rango es de ${rows} × ${columns} celdas (filas × columnas) y los demás de ${otherRows} × ${otherColumns}. Indique rangos del mismo tamaño, o valores sueltos.`,
  "whole-column":
    "se indicó una columna entera. Indique solo las filas con datos, como A2:A200, o una columna de tabla.",
  "alcohol-has-no-unit": ({ value }) =>
    `${value} no tiene unidad. Indique "pt", "oz", "L" o "mL", o escriba la cantidad como "48 oz".`,
  "alcohol-not-an-amount": ({ value }) =>
    `“${value}” no es una cantidad. Escríbala con su unidad, como 48 oz, o 0 si no hubo.`,
  "alcohol-unit-unknown": ({ value }) =>
    `“${value}” no es una unidad de alcohol de la tabla de corrección. Use pt, oz, L o mL.`,
  "not-yes-or-no": ({ value }) => `“${value}” no es ni sí ni no. Escriba sí, no, o nada.`,
  "not-a-date": ({ value }) =>
    `“${value}” no es una fecha. Escríbala como fecha, o como 2026-05-31.`,
  "date-is-unclear": ({ value, one, other }) =>
    `“${value}” se puede leer de dos maneras, con el día o el mes primero: ${one} o ${other}. Escríbala como fecha, o como 2026-05-31.`,
  "two-ways": ({ value, one, other }) =>
    `“${value}” se puede leer de dos maneras: ${one} o ${other}. Escriba la que corresponda.`,
  "bound-leaves-open": ({ value, limit }) =>
    `“${value}” se puede leer de dos maneras: más de ${limit}, o no. Escriba lo que se midió.`,
  "tick-is-unclear": ({ value }) =>
    `“${value}” se puede leer de dos maneras: que sucedió, o que alguien lo revisó y no había sucedido. Escriba sí o no.`,
  "found-or-tested": ({ value }) =>
    `“${value}” se puede leer de dos maneras: lo que encontró la prueba, o si se hizo. Escriba pasa o falla.`,
  "nothing-above": ({ value }) =>
    `“${value}” repite la celda de arriba, y arriba no hay nada. Escriba el valor.`,
  "not-a-specification": ({ value }, n) =>
    `“${value}” no es una especificación. Escríbala como 6 ± ${n("1.5")}, ${n("4.5")} to ${n("7.5")}, min 4 o max ${n("7.5")}.`,
  "specification-looks-like-date": ({ value }) =>
    `${value} no puede ser un contenido de aire; las hojas de cálculo convierten 5-8 en una fecha. Escríbalo como 5 to 8.`,
  "aggregate-size-cannot-be": ({ value }) =>
    `“${value}” no puede ser un tamaño de agregado. Escríbalo con su unidad, como 3/4 in o 19 mm.`,
  "not-a-time": ({ value }) => `“${value}” no es una hora del día. Escríbala como 14:05.`,
};
