import type { fieldsheetMessages as english } from "../english/fieldsheet";
import type { SameSentences } from "../sentence";

/** Sentences about a field sheet as a whole. */
export const fieldsheetMessages: SameSentences<typeof english> = {
  "or-else": ({ sentence }) => `O bien: ${sentence}`,
  "nothing-found": ({ rows }) => `No se encontró nada. Filas revisadas: ${rows}.`,
  "not-looked-at": ({ what }) => `No se revisó, porque la hoja no lo registra: ${what}.`,
  "looked-second-reading": "una segunda lectura",
  "looked-alcohol": "el alcohol",
  "looked-foam": "la espuma",
  "looked-settle": "el tiempo de estabilización",
  "looked-packed": "el concreto compactado sin desprender",
  "looked-leak": "las fugas",
  "looked-limits": "los límites (así que nada se comparó con una especificación)",
  "looked-limits-unread":
    "los límites (una columna que puede darlos no se leyó, así que nada se comparó con una especificación)",
  "column-named": ({ column }) => `columna ${column}`,
  "column-headed": ({ column, header }) => `columna ${column}, “${header}”`,
  "column-may-decide": ({ mayBe }) =>
    `puede contener ${mayBe} y no se leyó, así que las pruebas que afecta quedan incompletas. Diga qué es: dele un encabezado claro, o nómbrela en la configuración.`,
  "column-may-be": ({ mayBe }) =>
    `puede contener ${mayBe} y no se leyó. Diga qué es: dele un encabezado claro, o nómbrela en la configuración.`,
  "column-apart": "está detrás de una columna en blanco, y no se leyó con la tabla.",
  "columns-apart": ({ last }) =>
    `ella y lo que sigue hasta “${last}” están detrás de una columna en blanco, y no se leyeron con la tabla.`,
  "readings-apart": ({ last }) =>
    `ella y lo que sigue hasta “${last}” están detrás de una columna en blanco y tienen lecturas propias, así que no se leyeron con esta tabla. Revíselas por separado.`,
  "column-not-read": "no se leyó, porque nada dice qué contiene.",
  "no-header-row":
    "No se encontró una fila de encabezados. Seleccione la tabla con sus encabezados, como Muestra, Primera lectura, Segunda lectura, Alcohol (oz).",
  "rows-headed-otherwise": ({ header }) =>
    `Una fila más abajo, que empieza con “${header}”, encabeza las columnas de otra manera que el encabezado de arriba. Ni ella ni las filas de debajo se leyeron: revíselas por separado.`,
  "amount-told": ({ title }) =>
    `“${title}” habla de una cantidad que cambia el aire, y ninguna columna la tiene, así que las pruebas a las que toca están incompletas. Escriba lo que entró en cada prueba en una columna propia, 0 donde no fue nada.`,
  "words-may-void": ({ title }) =>
    `“${title}” está en una fila propia y habla de algo que puede anular una prueba, así que las pruebas de las que puede tratar están incompletas. Escríbalo junto a la prueba de la que trata.`,
  "row-of-words": ({ title }) =>
    `La fila contiene “${title}” y nada más. Se tomó por una observación, no por una prueba, y nada se leyó de ella.`,
  "title-of-another-method": ({ title }) =>
    `El título “${title}” habla de otro método, así que queda abierto si estas lecturas son de un medidor volumétrico, y las pruebas están incompletas. Si lo son, agregue una columna Método, o deje el título fuera de lo que se revisa.`,
  "said-once": ({ labels }) =>
    `Lo que está una sola vez, junto a ${labels}, se tomó para todas las pruebas de la tabla.`,
  "once-not-read": ({ label }) =>
    `Lo que está una sola vez, junto a “${label}”, no se leyó, porque no se sabe qué quiere decir. Nada se comparó con ello: nómbrelo de modo que se lea de una sola manera, como “Aire especificado”, 6 ± 1 %, o escríbalo en una columna de la tabla.`,
  "once-may-decide": ({ label }) =>
    `“${label}” está una sola vez para la tabla y cambia el aire de las pruebas, pero no se sabe cuánto es ni de cuál, así que están incompletas. Escríbalo en una columna de la tabla.`,
  "may-be-by-pressure":
    "la hoja corrige sus lecturas por el agregado y no registra ni alcohol ni tazas, como las pruebas con el medidor a presión. Queda abierto si son de un medidor volumétrico, así que están incompletas: agregue una columna Método.",
  "rows-may-be-readings":
    'puede contar las lecturas de una prueba, o las pruebas de una muestra, así que las pruebas están incompletas. Encabécela "Lectura N°" si cada fila es una lectura; si cada una es una prueba, llámela "not ours" en la configuración.',
  "rows-of-readings":
    "cuenta las lecturas de una prueba, y una lectura posterior no lleva nombre, o a un nombre le falta una lectura o la tiene dos veces, así que queda abierto qué filas son una prueba; están incompletas. Dé a cada prueba un nombre propio, o ponga sus lecturas en una fila.",
  "readings-in-rows":
    'cuenta las lecturas de una prueba, así que las filas de una prueba se leen como una sola, en la fila de su primera lectura. Si cada fila es una prueba aparte, llame a la columna "not ours" en la configuración.',
  "rows-are-no-tests": ({ most }) =>
    `La tabla tiene varias pruebas en una fila, o una fila para cada valor de una prueba. Tales tablas se leen hasta ${most} filas, y no como flujo: revísela por partes, cada una con sus encabezados.`,
  "no-tests-below":
    "No hay pruebas debajo de los encabezados. Seleccione los encabezados junto con las filas de abajo.",
  "no-readings-column":
    'No se reconoció ninguna columna de lecturas del medidor. Encabece una con "Primera lectura", "Segunda lectura" o "Lectura final".',
  "headers-and-rows-differ": ({ headers, columns }) =>
    `Los encabezados ocupan ${headers} celdas de ancho y las filas ${columns}. Indique ambos sobre las mismas columnas.`,
  "limits-do-not-fit": ({ given, rows }) =>
    `los límites dados (${given}) no son tantos como las filas (${rows}). Indique un número, o uno para cada fila.`,
  "limits-crossed": ({ low, high }) =>
    `El límite inferior, ${low} %, es mayor que el superior, ${high} %. Revise ambos.`,
};
