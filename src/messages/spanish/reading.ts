import type { readingMessages as english } from "../english/reading";
import type { SameSentences } from "../sentence";

/** Why a column is read as what it is, or is not. */
export const readingMessages: SameSentences<typeof english> = {
  "read-as-headed": ({ header, field }) =>
    `se lee como ${field} porque su encabezado es “${header}”`,
  "read-as-said": ({ words, field }) => `se lee como ${field} por sus palabras: ${words}`,
  "read-as-said-and-holds": ({ words, field }) =>
    `se lee como ${field} por sus palabras, ${words}, y por lo que contienen sus celdas`,
  "read-as-name": ({ header, field }) =>
    `se lee como ${field} porque nada más da nombre a las pruebas y “${header}” tiene otro texto para cada una`,
  "read-as-kept": ({ field }) => `se lee como ${field} porque así lo dice la configuración`,
  "could-be-several": ({ header, fields }) =>
    `“${header}” se puede leer como más de una cosa: ${fields}. Diga cuál es.`,
  "columns-alike": ({ header, others, field }) =>
    `“${header}” y ${others} podrían ser ${field} por igual. Diga cuál de ellas lo es.`,
  "not-said-outright": ({ header, fields }) =>
    `“${header}” puede ser ${fields}, pero no lo dice claramente. Diga qué es.`,
  "cells-hold-other": ({ header, fields }) =>
    `las palabras de “${header}” dicen ${fields}, pero sus celdas contienen otra cosa. Diga qué es.`,
  "another-is-nearer": ({ header, field, other }) =>
    `“${header}” no se lee como ${field}, porque “${other}” lo dice más claramente`,
  "nothing-known": ({ header }) => `las palabras de “${header}” no dicen nada que se conozca aquí`,
  "no-header": "la columna no tiene encabezado",
  "holds-nothing": "la columna no contiene nada",
  "not-ours": ({ header, what }) => `“${header}” no se lee: ${what}`,
  "not-ours-kept": "no se lee, porque así lo dice la configuración",
};
