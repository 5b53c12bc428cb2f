import type { hostMessages as english } from "../english/hosts";
import type { SameSentences } from "../sentence";

/** Sentences about the spreadsheet program and what stands in its way. */
export const hostMessages: SameSentences<typeof english> = {
  "selection-empty":
    "La selección no contiene nada. Seleccione una celda de la tabla, o la tabla con sus encabezados, e intente de nuevo.",
  "selection-in-parts":
    "La selección tiene varias partes o no está hecha de celdas. Seleccione un solo bloque de celdas e intente de nuevo.",
  "selection-too-large": ({ rows, columns, limit }) =>
    `${rows} filas por ${columns} columnas son más de lo que se puede leer de una vez. Seleccione ${limit} celdas como máximo.`,
  "host-busy": "Se está editando una celda. Presione Entrar o Esc en la hoja e intente de nuevo.",
  "dialog-open": "Hay un cuadro de diálogo abierto en Excel. Ciérrelo e intente de nuevo.",
  "host-overloaded": "Excel está ocupado o le falta memoria. Espere un momento e intente de nuevo.",
  "too-much-at-once":
    "Esto es más de lo que Excel acepta de una vez. Seleccione menos filas o columnas e intente de nuevo.",
  "sheet-protected":
    "La hoja o el libro está protegido o abierto solo para lectura. Quite la protección en Revisar e intente de nuevo.",
  "marks-not-on-protected-sheet": ({ sheet }) =>
    `La hoja “${sheet}” está protegida, así que no se marcó. Quite la protección en Revisar y marque de nuevo.`,
  "marks-left-on-protected-sheet": ({ sheet }) =>
    `La hoja “${sheet}” está protegida, así que nuestras marcas siguen en ella. Quite la protección en Revisar y quite las marcas de nuevo.`,
  "notes-left-on-protected-sheet": ({ sheet }) =>
    `La hoja “${sheet}” está protegida contra cambios en las notas, así que nuestras notas siguen en ella. Quite la protección en Revisar y quite las marcas.`,
  "notes-changed-left": ({ places }) =>
    `Las notas nuestras que se cambiaron después ahora son de usted y quedan como están: ${places}. Elimínelas en la hoja si no las quiere.`,
  "notes-not-seen-here":
    "Este Excel no nos deja ver las notas. Las notas que pusimos en un Excel más reciente siguen ahí; quite las marcas en ese.",
  "places-and-more": ({ named, more }) => `${named} y ${more} más`,
  "marks-hidden": ({ count }) =>
    `Celdas marcadas en filas o columnas ocultas o filtradas: ${count}. Muestre todas las filas y columnas para verlas.`,
  "marks-perhaps-hidden":
    "Algunas filas o columnas de la tabla están ocultas o filtradas, y puede haber marcas en ellas. Muestre todas las filas y columnas para verlas.",
  "table-changed":
    "La tabla cambió mientras se marcaba, así que no hay nada marcado. Espere a que nadie la edite y marque de nuevo.",
  "sheet-gone":
    "Una hoja o unas celdas que estaban antes ya no están. Lea la tabla de nuevo e intente otra vez.",
  "sheet-not-of-cells":
    "Esta hoja contiene un gráfico o una macro, no celdas. Vaya a la hoja que tiene la tabla e intente de nuevo.",
  "cells-in-the-way":
    "Estorban celdas combinadas, un filtro o una tabla dinámica. Quítelos o elija otras celdas, e intente de nuevo.",
  "changed-meanwhile": "Otra persona o programa cambió el libro al mismo tiempo. Intente de nuevo.",
  "workbook-not-in-front": "Hay otro libro al frente. Haga clic en este libro e intente de nuevo.",
  "not-signed-in":
    "Excel pide antes iniciar sesión o una contraseña. Hágalo en Excel e intente de nuevo.",
  "links-blocked":
    "Excel tiene bloqueados los vínculos de este libro a otros archivos. Permítalos en Excel e intente de nuevo.",
  "excel-cannot":
    "Este Excel no puede hacer eso. Las funciones y la lista de hallazgos sirven sin ello; un Excel más reciente sí puede.",
  "excel-too-old":
    "Este Excel es demasiado antiguo para leerlo y marcarlo. Las funciones de hoja sirven en él; para lo demás use Excel 2021 o posterior, o Excel en la web.",
  "notes-need-newer-excel":
    "No se agregaron notas, porque este Excel no puede agregarlas. Los colores y la lista de hallazgos dicen lo mismo.",
  "notes-kept": ({ count }) =>
    `Las celdas con una nota o un comentario de usted no recibieron ninguna nuestra: ${count}. Nuestras frases están en la lista de hallazgos.`,
  "notes-only-first": ({ count }) =>
    `Se agregaron notas solo a las primeras ${count} celdas, para que la hoja siga siendo ágil. Todas las frases están en la lista de hallazgos.`,
  "notes-not-on-protected-sheet": ({ sheet }) =>
    `La hoja “${sheet}” está protegida contra notas, así que ahí no se agregó ninguna. Todas las frases están en la lista de hallazgos.`,
  "results-too-long": ({ rows }) =>
    `${rows} líneas son más de las que caben en una hoja. Revise menos filas y escriba de nuevo la hoja de resultados.`,
  "host-failed":
    "Excel no hizo esto y no dio una razón que ayude. Intente de nuevo; si sigue igual, guarde el libro, ciérrelo y ábralo otra vez.",
};
