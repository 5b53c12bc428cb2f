import type { paneReportMessages as english } from "../english/pane-report";
import type { SameSentences } from "../sentence";

/** What the report says. */
export const paneReportMessages: SameSentences<typeof english> = {
  "report-check-first":
    "Presione Revisar; entonces se puede imprimir el informe de lo que se encontró.",
  "report-print": "Imprimir",
  "report-print-hint":
    "Si no se abre una ventana para imprimir, escriba una hoja de resultados en la página “Revisión” e imprímala.",
  "report-title": "Revisión de pruebas de campo de concreto fresco",
  "report-of": ({ address, tests }) => `Revisado: ${address}. Pruebas que contiene: ${tests}.`,
  "report-tests": ({ counts }) => `Pruebas: ${counts}.`,
  "report-specification": ({ counts }) => `Pruebas válidas frente a la especificación: ${counts}.`,
  "report-no-specification": "Ninguna prueba se comparó con una especificación.",
  "report-findings": ({ counts }) => `Hallazgos: ${counts}.`,
  "report-where": "Dónde",
  "report-finding": "Hallazgo",
  "report-cut-here": ({ shown, left }) =>
    `Aquí se muestran los primeros ${shown} hallazgos; otros ${left} se imprimen, hasta donde alcanza el papel, y están en la hoja de resultados.`,
  "report-cut": ({ shown, left }) =>
    `Se imprimen los primeros ${shown} hallazgos; otros ${left} están en la hoja de resultados.`,
  "report-method": "Método",
  "report-method-text": (_, n) =>
    `Contenido de aire por el método volumétrico, según se entienden aquí ASTM C173/C173M y AASHTO T 196: lectura final del medidor, menos la corrección por alcohol, más ${n("1.00")} % por cada vaso calibrado, informado al ${n("0.25")} % más cercano, con las mitades al incremento par. Algunos de los valores en que se basa son de memoria y están por compararse con la norma vigente.`,
};
