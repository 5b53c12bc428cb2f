import type { fileMessages as english } from "../english/files";
import type { SameSentences } from "../sentence";

/** Sentences about files: what cannot be read, what was left out, what is not shown. */
export const fileMessages: SameSentences<typeof english> = {
  "file-not-read": ({ name }) =>
    `“${name}” no se puede leer. Elija un libro guardado como .xlsx, o un archivo .csv con una fila por línea.`,
  "file-empty": ({ name }) => `“${name}” no contiene celdas. Elija otro archivo.`,
  "file-damaged": ({ name }) =>
    `“${name}” está dañado o incompleto. Ábralo donde se hizo y guárdelo de nuevo como .xlsx.`,
  "file-encrypted": ({ name }) =>
    `“${name}” está protegido con contraseña. Ábralo donde se hizo, quite la contraseña y guarde una copia.`,
  "file-old-workbook": ({ name }) =>
    `“${name}” es un libro del tipo antiguo .xls. Ábralo en una hoja de cálculo y guárdelo como .xlsx.`,
  "file-binary-workbook": ({ name }) =>
    `“${name}” es un libro del tipo binario .xlsb. Ábralo en una hoja de cálculo y guárdelo como .xlsx.`,
  "file-opendocument": ({ name }) =>
    `“${name}” es un archivo OpenDocument (.ods). Ábralo en una hoja de cálculo y guárdelo como .xlsx.`,
  "file-of-another-kind": ({ name, kind }) =>
    `“${name}” no es una hoja de cálculo, diga lo que diga su nombre: contiene ${kind}. Elija un libro guardado como .xlsx, o un archivo .csv.`,
  "file-unpacks-too-large": ({ name, size, most }) =>
    `“${name}” se descomprime en ${size} MB, más de los ${most} MB que se leen. Elimine las hojas e imágenes que no hagan falta y guárdelo de nuevo.`,
  "file-claims-too-much": ({ name, range, sheet }) =>
    `“${name}” declara celdas que no existen: ${range} en la hoja “${sheet}”. Elimine las filas y columnas vacías después de la última prueba, guárdelo y ábralo de nuevo.`,
  "file-too-large": ({ name, most }) =>
    `“${name}” contiene más de las ${most} filas que se aceptan. Use el complemento en Excel, o la línea de comandos para un archivo CSV.`,
  "file-too-many-cells": ({ name, cells, most }) =>
    `“${name}” contiene ${cells} celdas, más de las ${most} que se aceptan. Guarde la hoja de pruebas como un libro aparte.`,
  "file-line-too-long": ({ name, length, line }) =>
    `“${name}” tiene ${length} caracteres en la línea ${line} sin un final. Guárdelo de nuevo como CSV con una fila por línea.`,
  "quote-not-closed": ({ name, line }) =>
    `“${name}” abre unas comillas en la línea ${line} y no las cierra, así que todo lo de abajo quedó en una celda. Ciérrelas y abra de nuevo el archivo.`,
  "nul-bytes-left-out": ({ name, count }) =>
    `“${name}” tenía ${count} caracteres NUL, que no son texto y se omitieron.`,
  "file-shows-not-all": ({ name, what }) =>
    `“${name}” contiene además lo que el banco de trabajo no muestra, y conserva al guardar: ${what}.`,
  "file-formulas-not-computed": ({ name, count }) =>
    `“${name}” tiene ${count} fórmulas sobre columnas de una tabla. Muestran el último valor que tuvieron, y se conservan al guardarlo.`,
  "file-opening": ({ name, size }) => `Abriendo “${name}” (${size} MB) …`,
  "file-opened": ({ name }) => `“${name}” está abierto. Permanece en este navegador.`,
  "file-saving": "Guardando …",
  "file-saved": ({ name, sheets, cells, notes }) =>
    `Guardado como “${name}” en la carpeta de descargas: el archivo tal como se abrió, con nuestras marcas como están ahora. Notas cambiadas: ${notes}; celdas cambiadas: ${cells}; hojas nuevas: ${sheets}. No lleva los formatos, anchos ni reglas que se hayan puesto aquí.`,
  "moved-cells-not-saved": ({ sheet }) =>
    `Aquí se insertaron, eliminaron o movieron filas o columnas de “${sheet}”, y con eso no se puede guardar un archivo. Deshágalo (Ctrl+Z), o hágalo en el programa que creó el archivo.`,
  "new-name-not-saved": ({ sheet }) => `La hoja “${sheet}” conserva su nombre en el archivo.`,
  "deleted-sheet-kept": ({ sheet }) =>
    `La hoja “${sheet}” se eliminó aquí y sigue estando en el archivo.`,
  "cell-not-saved": ({ sheet, cell }) =>
    `La celda ${cell} de “${sheet}” tiene una fórmula que llena también otras celdas, así que quedó como está en el archivo.`,
};
