import type { commandLineMessages as english } from "../english/command-line";
import type { SameSentences } from "../sentence";

/** Sentences of the command line. */
export const commandLineMessages: SameSentences<typeof english> = {
  "option-unknown": ({ option }) =>
    `${option} no es una opción. Escriba --help para ver las que hay.`,
  "option-needs-number": ({ option, value }, n) =>
    `${option} necesita un número, como ${option} ${n("4.5")}, y “${value}” no lo es.`,
  "option-needs-file": ({ option }) =>
    `${option} necesita el nombre de un archivo, como ${option} setup.csv.`,
  "option-decimal": ({ value }) =>
    `--decimal necesita un punto o una coma, y “${value}” no es ni lo uno ni lo otro.`,
  "option-language": ({ value }) =>
    `--language necesita en o es, y “${value}” no es ni lo uno ni lo otro.`,
  "no-file-named":
    "No se nombró ningún archivo. Nombre archivos, o - para lo que llega por la entrada; --help dice más.",
  "file-not-found": ({ name }) =>
    `“${name}” no está o no se puede abrir. Revise su nombre y sus permisos.`,
  "file-without-tests": ({ name }) =>
    `“${name}” no contiene ninguna tabla de pruebas volumétricas de aire que se pueda leer. Necesita una fila de encabezados con una lectura del medidor, como “Primera lectura”.`,
  "sheet-without-tests":
    "aquí no se encontró ninguna tabla de pruebas volumétricas de aire. Su encabezado necesita una lectura del medidor, como “Primera lectura”.",
  "line-is-no-json": ({ line }) =>
    `La línea ${line} no es ni un objeto JSON ni una lista de celdas, así que se omitió.`,
  "name-not-in-first-line": ({ line, column }) =>
    `La línea ${line} tiene “${column}”, que no está en la primera línea, así que se omitió aquí y más abajo. Nómbrelo en la primera línea.`,
  "more-cells-than-headers": ({ line }) =>
    `La línea ${line} tiene más celdas que encabezados hay, así que las últimas se omitieron.`,
  "stream-read-otherwise": ({ line, header, above, here }) =>
    `Desde la línea ${line}, “${header}” se leyó como ${here}; más arriba, como ${above}. Diga en una configuración cuál es, o dé el archivo por su nombre, para que se lea completo.`,
  "stream-yes-is-good": "un sí dice que todo está en orden",
  "stream-day-first": "primero el día",
  "stream-month-first": "primero el mes",
  "more-lines-not-read": ({ count }) =>
    `Más de ${count} líneas no se leyeron completas; las demás no se nombran una por una.`,
};
