import type { paneFunctionsMessages as english } from "../english/pane-functions";
import type { SameSentences } from "../sentence";

/** What the page of the worksheet functions says. */
export const paneFunctionsMessages: SameSentences<typeof english> = {
  "pane-page-functions": "Funciones",
  "functions-title": "Funciones",
  "functions-search": "Nombre, o una palabra del oficio, como peso unitario",
  "functions-loading": "La ayuda de las funciones se está cargando.",
  "functions-not-loaded":
    "La ayuda de las funciones no se pudo cargar. Cierre el panel y ábralo de nuevo; las funciones mismas trabajan sin ella.",
  "functions-found": ({ count }) => `Funciones: ${count}.`,
  "functions-none": ({ typed }) =>
    `No se encuentra ninguna función para “${typed}”. Pruebe una sola palabra, como aire, rendimiento o límite.`,
  "functions-optional": ({ name }) => `${name} (se puede omitir)`,
  "functions-example": "Ejemplo:",
  "functions-insert": "Insertar el ejemplo",
  "functions-insert-hint":
    "Un ejemplo va a la celda seleccionada, donde se calcula enseguida; ponga sus propias celdas en lugar de sus números. Una celda que contiene algo se deja como está.",
  "functions-inserted": ({ cell }) => `Insertado en ${cell}.`,
  "cell-is-filled": ({ cell }) =>
    `${cell} contiene algo, así que no se insertó nada. Seleccione una celda vacía e inserte de nuevo.`,
};
