import type { paneReportMessages as english } from "../english/pane-report";
import type { SameSentences } from "../sentence";

/** What the report says. */
export const paneReportMessages: SameSentences<typeof english> = {
  "report-check-first":
    "Presione Revisar; entonces el informe de lo que se encontró se puede imprimir o poner en una hoja.",
  "report-print": "Imprimir",
  "report-print-hint":
    "Si no se abre una ventana para imprimir, escriba el informe en una hoja e imprímala desde la hoja de cálculo.",
  "report-write-sheet": "Escribir una hoja de informe",
  "report-save-xlsx": "Guardar como .xlsx",
  "report-save-csv": "Guardar como .csv",
  "report-sheet-written": ({ sheet }) => `El informe está en la hoja “${sheet}”.`,
  "report-saved": ({ file }) => `El informe se entregó como ${file}.`,
  "report-no-name": "pruebas",
  "report-file-name": ({ file }) => `Informe de ${file}`,
  "report-scope": "Pruebas",
  "report-scope-all": "todas las revisadas",
  "report-scope-test": "la prueba bajo el cursor",
  "report-scope-day": ({ day }) => `el día ${day}`,
  "report-scope-week": ({ from, to }) => `la semana del ${from} al ${to}`,
  "report-select-test":
    "Seleccione una prueba en la tabla revisada; el informe es entonces de esa prueba.",
  "report-head-hint":
    "Lo que la hoja misma dice está en el informe. Lo que le falta se puede escribir aquí una vez; se guarda con el libro.",

  "report-title": "Informe de pruebas de campo de concreto fresco",
  "report-head": "Encabezado del informe",
  "report-head-number": "Número de informe",
  "report-head-project": "Proyecto",
  "report-head-location": "Ubicación",
  "report-head-date": "Fecha de las pruebas",
  "report-head-mix": "Mezcla",
  "report-head-specification": "Especificación",
  "report-head-testers": "Probado por",
  "report-head-meter": "Medidor",
  "report-head-meterCheck": "Última verificación del medidor",
  "report-and-more": ({ listed, more }) => `${listed} y ${more} más, vea la tabla`,
  "report-limits": ({ low, high }) => `${low} a ${high} %`,
  "report-limit-low": ({ low }) => `${low} % o más`,
  "report-limit-high": ({ high }) => `${high} % o menos`,

  "report-of-all": "De todas las pruebas revisadas.",
  "report-of-test": ({ sample }) => `De una prueba, ${sample}.`,
  "report-of-one": "De una prueba.",
  "report-of-day": ({ day }) => `De las pruebas del ${day}.`,
  "report-of-week": ({ from, to }) => `De las pruebas del ${from} al ${to}.`,
  "report-source": ({ file, sheet, cells }) =>
    `Archivo: ${file}. Hoja: ${sheet}. Celdas: ${cells}.`,
  "report-checked-by": ({ version, rules, time }) =>
    `Revisado ${time} con Fresh Concrete Functions ${version}, con ${rules} reglas.`,
  "report-foot": ({ file, sheet }) => `Archivo ${file}, hoja ${sheet}`,
  "report-page": ({ page, pages }) => `Página ${page} de ${pages}`,

  "report-counts": "Resumen",
  "report-tests": ({ counts }) => `Pruebas: ${counts}.`,
  "report-specification": ({ counts }) => `Pruebas válidas frente a la especificación: ${counts}.`,
  "report-no-specification": "Ninguna prueba se comparó con una especificación.",
  "report-findings": ({ counts }) => `Hallazgos: ${counts}.`,

  "report-table": "Pruebas",
  "report-row": "Fila",
  "report-sample": "Muestra",
  "report-date": "Fecha",
  "report-time": "Hora",
  "report-mix": "Mezcla",
  "report-first": "1.ª, %",
  "report-second": "2.ª, %",
  "report-third": "3.ª, %",
  "report-final": "Final, %",
  "report-alcohol": "Alcohol",
  "report-cups": "Vasos",
  "report-air-reported": "Informado, %",
  "report-air": "Aire, %",
  "report-limits-head": "Límites",
  "report-result": "Resultado",
  "report-density": "Densidad",
  "report-temperature": "Concreto",
  "report-slump": "Revenimiento",
  "report-label-unit": ({ label, unit }) => `${label}, ${unit}`,
  "report-valid-within": "válida, dentro",
  "report-valid-below": "válida, por debajo",
  "report-valid-above": "válida, por encima",
  "report-table-key":
    "1.ª, 2.ª, 3.ª: lecturas del medidor como se registraron. Final: la lectura de la que se calcula el aire. Aire: el resultado de la revisión, solo de pruebas válidas.",

  "report-whole-sheet": "La hoja en su conjunto",
  "report-sample-in-row": ({ sample, row }) => `${sample}, fila ${row}`,
  "report-row-alone": ({ row }) => `Fila ${row}`,
  "report-where": "Dónde",
  "report-finding": "Hallazgo",
  "report-decision": "Decisión del revisor",
  "report-decided": ({ decision }) => `Decisión del revisor: ${decision}`,
  "report-cut-here": ({ shown, left }) =>
    `Aquí se muestran los primeros ${shown}; otros ${left} se imprimen, hasta donde alcanza el papel, y están en la hoja de informe.`,
  "report-cut": ({ shown, left }) =>
    `Se imprimen los primeros ${shown}; otros ${left} están en la hoja de informe.`,
  "report-undated": ({ tests }) =>
    `Pruebas sin una fecha que se pueda leer, que no son de ningún día: ${tests}.`,
  "report-others": ({ tests }) =>
    `Pruebas de las celdas revisadas que no están en este informe: ${tests}.`,
  "report-not-there": ({ fields }) =>
    `Otras cosas que ninguna columna tiene y ninguna regla pudo ver: ${fields}.`,
  "report-more-mixes": ({ shown, left }) =>
    `Se dibujan las tendencias de ${shown} mezclas; las de otras ${left} están en la página “Tendencia”.`,

  "report-method": "Método",
  "report-method-text": (_, n) =>
    `Contenido de aire por el método volumétrico, según se entienden aquí ASTM C173/C173M y AASHTO T 196: lectura final del medidor, menos la corrección por alcohol, más ${n("1.00")} % por cada vaso calibrado, informado al ${n("0.25")} % más cercano, con las mitades al incremento par. De memoria, por compararse con la norma vigente: el ${n("1.00")} % de un vaso, el incremento de ${n("0.25")} %, y que menos de 2 pt de alcohol no restan nada.`,

  "report-signatures": "Firmas",
  "report-signed-tester": "Probado por",
  "report-signed-reviewer": "Revisado por",
  "report-name-signature-date": "Nombre, firma, fecha",
};
