import type { paneReviewMessages as english } from "../english/pane-review";
import type { SameSentences } from "../sentence";

/** What is said of a review: decisions about findings, and the sheet on which they are kept. */
export const paneReviewMessages: SameSentences<typeof english> = {
  "review-title": "Dictamen",
  "review-filter": "Mostrar los hallazgos por su decisión",
  "word-open": "pendiente",
  "word-accepted": "aceptado",
  "word-corrected": "corregido",
  "review-choose": "Elija un hallazgo de la lista para decidirlo.",
  "review-of": ({ place, sentence }) => `${place}: ${sentence}`,
  "review-for": "Decidir",
  "review-for-one": "este hallazgo",
  "review-for-all": ({ count, rule }) => `los ${count} pendientes listados de “${rule}”`,
  "review-reason": "Motivo",
  "review-initials": "Sus iniciales",
  "review-accept": "Aceptar",
  "review-leave-open": "Dejar pendiente",
  "review-where-kept": ({ sheet }) =>
    `Una decisión es una línea de la hoja “${sheet}”, que se crea con la primera. Las líneas se agregan, nunca se cambian.`,
  "review-initials-missing":
    "Escriba antes sus iniciales: una decisión dice de quién es. No se registró nada.",
  "review-reason-missing":
    "Escriba antes un motivo: un hallazgo se acepta por alguno. No se registró nada.",
  "review-recorded": ({ count, sheet }) => `Se registró en “${sheet}”: ${count}.`,
  "review-recorded-before": ({ sheet }) => `“${sheet}” ya lo dice; no se agregó nada.`,
  "review-finding-gone":
    "La hoja cambió entretanto y este hallazgo ya no está. No se registró nada.",
  "review-by": ({ decision, time, initials }) => `${decision}, ${initials}, ${time}`,
  "review-by-with-reason": ({ by, reason }) => `${by}: ${reason}`,
  "review-reopened": ({ time, initials, value }) =>
    `pendiente de nuevo: ${initials} lo aceptó el ${time} como estaba entonces (${value})`,
  "review-value-blank": "en blanco",
  "review-stands-again": ({ time, initials }) =>
    `pendiente de nuevo: ${initials} lo anotó como corregido el ${time}, y sigue como antes`,
  "review-corrections": ({ count }) => `¿Corregidos desde entonces? ${count}`,
  "review-corrections-hint":
    "Estos hallazgos ya no están porque se cambiaron celdas. Regístrelo como una corrección, o no.",
  "review-correction": ({ sample, rule, from, to }) => `${sample}, ${rule}: era ${from}, es ${to}`,
  "review-record": "Registrar como corregido",
  "review-record-all": ({ count }) => `Registrar los ${count}`,
  "review-no-correction": "No es una corrección",
  "review-corrected-before": ({ count }) => `Corregidos: ${count}`,
  "review-corrected-line": ({ correction, by }) => `${correction} (${by})`,
  "review-all-filtered": "Ningún hallazgo de los pesos y decisiones elegidos arriba.",
  "review-gone": ({ sheet }) =>
    `La hoja “${sheet}” ya no está: se eliminó o se le cambió el nombre. Sus decisiones no se ven; la siguiente empieza una hoja nueva.`,
  "review-sheet-not-ours": ({ sheet, missing }) =>
    `La hoja “${sheet}” contiene otra cosa, o se cambiaron sus encabezados (no se encontraron: ${missing}). No se lee nada de ella ni se escribe en ella. Póngale otro nombre, o corrija los encabezados.`,
  "review-decision-unknown": ({ sheet, line, decision }) =>
    `“${sheet}”, línea ${line}: “${decision}” no es una decisión que se conozca aquí, así que la línea no se tomó. Escriba "accepted", "corrected" u "open".`,
  "review-time-unreadable": ({ sheet, line, time }) =>
    `“${sheet}”, línea ${line}: la hora “${time}” no se puede leer, así que la línea no se tomó. Escríbala como 2026-05-31 14:05.`,
  "review-line-incomplete": ({ sheet, line, decision, missing }) =>
    `“${sheet}”, línea ${line}: a ${decision} le falta ${missing}, así que la línea no se tomó. Complétela.`,
  "review-lines-not-taken": ({ count }) => `Líneas del dictamen que no se tomaron: ${count}`,
  "review-other-sheet": ({ name, count }) =>
    `Decisiones sobre una hoja “${name}”, que no está en este libro: ${count}. Si esta hoja se llamaba así antes, indíquelo.`,
  "review-was-called": ({ name }) => `Esta hoja era “${name}”`,
  "review-renamed": ({ name, sheet }) => `Registrado: “${sheet}” se llamaba antes “${name}”.`,
  "review-report": ({ counts }) => `Dictamen: ${counts}.`,
};
