import type { acceptanceMessages as english } from "../english/acceptance";
import type { SameSentences } from "../sentence";

/** Sentences about results against a specification, agreement and control charts. */
export const acceptanceMessages: SameSentences<typeof english> = {
  "precision-method-unknown": ({ value, methods }) =>
    `no hay precisión registrada para “${value}”. Use uno de estos métodos: ${methods}; o indique usted la desviación.`,
  "precision-not-established": ({ method }) =>
    `${method} no establece precisión para un solo operador. Indique "several" como operadores.`,
  "value-not-in-unit": ({ value, unit, method }) =>
    `${value} ${unit} no puede ser un resultado de ${method}. Revise el número y su unidad; las unidades SI llevan el número del método con una M, como C138M.`,
  "operators-unknown": ({ value }) =>
    `“${value}” no dice quién hizo las pruebas. Escriba "one" para un solo operador o "several" para varios.`,
  "tolerance-negative": ({ value }) =>
    `no puede haber una tolerancia de ${value}. Indique, sin signo, cuánto puede apartarse un resultado del objetivo.`,
  "limits-missing":
    "No se dio ningún límite. Indique un límite inferior, un límite superior, o ambos.",
  "limits-the-wrong-way-round": ({ low, high }) =>
    `El límite inferior, ${low}, es mayor que el superior, ${high}. Revise ambos.`,
  "places-not-whole": ({ value }) =>
    `${value} no es un número de decimales. Indique 0, 1, 2 …, o no indique nada para comparar el número como está.`,
  "risk-out-of-range": ({ value }, n) =>
    `no se puede cumplir un riesgo de ${value}. Indique una probabilidad mayor que 0 y no mayor que ${n("0.5")}, como ${n("0.05")}.`,
  "guard-leaves-nothing": ({ risk }) =>
    `Ningún resultado puede cumplir un riesgo de ${risk}: los límites están demasiado cerca uno del otro para la desviación de la prueba. Acepte un riesgo mayor o use un método más preciso.`,
  "deviation-not-above-zero": ({ value }) =>
    `${value} no es una desviación estándar. Indique un número mayor que 0 en la unidad del resultado.`,
  "lambda-out-of-range": ({ value }, n) =>
    `no puede haber un peso de ${value}. Indique un número mayor que 0 y no mayor que 1; lo usual es de ${n("0.2")} a ${n("0.3")}.`,
  "allowance-negative": ({ value }) =>
    `no puede haber una holgura de ${value}. Indique la mitad del cambio que importa, en la unidad de los valores.`,
  "decision-not-above-zero": ({ value }) =>
    `${value} no es un valor de decisión. Indique un número mayor que 0 en la unidad de los valores.`,
  "chart-limits-needed":
    "se necesitan el límite inferior, la media y el límite superior, en orden creciente, como los da CHART.LIMITS.",
  "one-column-needed": ({ columns }) =>
    `el rango tiene ${columns} columnas. Indique una sola, porque cada resultado ocupa varias celdas contiguas.`,
  "one-series-needed": ({ rows, columns }) =>
    `el rango tiene ${rows} filas y ${columns} columnas. Indique los resultados de una serie, en una columna o en una fila.`,
  "one-value-needed": ({ cells }) => `se dieron ${cells} celdas. Indique un solo valor.`,
  "place-in-series": ({ name, cell }) => `${name}, celda ${cell}`,
  "chart-needs-two-values":
    "Una carta de control necesita dos valores o más. Dé más resultados de la misma mezcla.",
  "source-memory": "de memoria, por verificar con la norma vigente",
  "source-memory-type-a":
    "de memoria, por verificar con la norma vigente; para medidores Tipo A y hasta 7 % de aire, el Tipo B no tiene un enunciado propio",
  "beyond-a-limit": "fuera de un límite de control",
  "two-of-three-near-a-limit": "dos de tres cerca del mismo límite de control",
  "four-of-five-off-the-mean": "cuatro de cinco lejos de la media, del mismo lado",
  "eight-on-one-side": "ocho seguidos de un lado de la media",
  "six-rising": "seis seguidos en aumento",
  "six-falling": "seis seguidos en descenso",
  "fourteen-up-and-down": "catorce seguidos que suben y bajan por turnos",
};
