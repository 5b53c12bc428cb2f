import type { paneTestMessages as english } from "../english/pane-test";
import type { SameSentences } from "../sentence";

/** What the page about one test says. */
export const paneTestMessages: SameSentences<typeof english> = {
  "test-title-none": "Una prueba",
  "test-title": ({ row }) => `La prueba de la fila ${row}`,
  "test-title-sample": ({ row, sample }) => `La prueba de la fila ${row}, ${sample}`,
  "test-check-first":
    "Presione Revisar y seleccione una prueba en la hoja, o escriba aquí los números de una prueba.",
  "test-select-row":
    "Seleccione una prueba en la tabla revisada, o escriba aquí los números de una prueba.",
  "test-found": "Se encontró en esta prueba:",
  "test-is-void":
    "Su resultado no vale y no se compara con la especificación. Lo que sigue es lo que darían los números por sí solos.",
  "test-is-incomplete":
    "No decide nada hasta que su registro esté completo. Lo que sigue toma lo que falta como si no hubiera.",
  "reading-title": "La lectura final",
  "reading-second-missing": ({ first }) =>
    `Hay una primera lectura, ${first} %, y ninguna segunda que concuerde con ella.`,
  "reading-second-agrees": ({ first, second }, n) =>
    `La segunda lectura, ${second} %, concuerda con la primera, ${first} %, dentro de ${n("0.25")} %: la segunda es la final.`,
  "reading-third-unneeded": ({ third }) => `La tercera, ${third} %, no hacía falta y no cuenta.`,
  "reading-second-differs": ({ first, second }, n) =>
    `La segunda lectura, ${second} %, difiere de la primera, ${first} %, en más de ${n("0.25")} %, así que hace falta una tercera.`,
  "reading-third-missing": "No hay ninguna.",
  "reading-third-agrees": ({ second, third }, n) =>
    `La tercera, ${third} %, concuerda con la segunda, ${second} %, dentro de ${n("0.25")} %: la tercera es la final.`,
  "reading-third-differs": ({ second, third }) =>
    `La tercera, ${third} %, también difiere de la segunda, ${second} %: la prueba queda anulada.`,
  "test-no-final-reading":
    "Las lecturas de esta fila no dan una lectura final. Escriba una para ver qué daría.",
  "test-inputs": "Probar otros números",
  "test-changes-nothing": "Los números escritos aquí no cambian nada en la hoja.",
  "test-reset": "Volver al registro",
  "test-input-reading": "Lectura final, %",
  "test-input-cups": "Vasos calibrados",
  "test-input-alcohol": "Alcohol (por ejemplo, 48 oz)",
  "test-input-low": "Límite inferior, %",
  "test-input-high": "Límite superior, %",
  "test-input-check": "Prueba de verificación, %",
  "test-input-deviation": "Su propia desviación, %",
  "test-no-limits": "Sin límites no hay con qué comparar el resultado.",
  "test-margin-inside": ({ amount }) => `Está ${amount} % dentro del límite más cercano.`,
  "test-margin-outside": ({ amount }) => `Está ${amount} % fuera del límite.`,
  "test-margin-on-limit":
    "Dentro, sobre el límite: el límite mismo está dentro. Es casi tan probable que el contenido real de aire esté más allá del límite como dentro de él, y eso no cambia el veredicto.",
  "test-chance-given": ({ chance, deviation }) =>
    `La probabilidad de que el contenido real de aire esté dentro de los límites es ${chance}, con la desviación de ${deviation} % que usted indicó.`,
  "test-chance-published": ({ chance, deviation, method, source }) =>
    `La probabilidad de que el contenido real de aire esté dentro de los límites es ${chance}, con una desviación de ${deviation} % de un resultado de ${method}. Procedencia de esa cifra: ${source}; usted puede indicar la suya.`,
  "test-decision-accept": "La regla de la prueba de verificación no pide nada más: aceptar.",
  "test-decision-accept-by-check": "La prueba de verificación está dentro: por su regla, aceptar.",
  "test-decision-check":
    "La regla pide una prueba de verificación de inmediato, sobre otra porción de la misma muestra. Los dos resultados no se promedian.",
  "test-decision-reject": "La prueba de verificación también está fuera: por su regla, rechazar.",

  "steps-title": "Paso a paso",
  "steps-step": "Paso",
  "steps-change": "Cambio",
  "steps-value": "Aire, %",
  "steps-reading": "lectura final",
  "steps-alcohol": ({ amount, unit }) => `corrección por ${amount} ${unit} de alcohol`,
  "steps-alcohol-between": ({ amount, unit }) =>
    `corrección por ${amount} ${unit} de alcohol, leída entre dos filas de la tabla`,
  "steps-alcohol-none": "corrección por alcohol, no se registró",
  "steps-cups": ({ cups }) => `vasos calibrados, ${cups}`,
  "steps-rounding": (_, n) => `redondeo al ${n("0.25")} más cercano, mitades al par`,

  "grid-title": "Si el registro se apartara un paso",
  "grid-reading": "La lectura difiere en",
  "grid-as-recorded": "como se registró",
  "grid-cups": ({ cups }) => `vasos: ${cups}`,
  "grid-less-alcohol": ({ amount, unit }) => `menos alcohol: ${amount} ${unit}`,
  "grid-more-alcohol": ({ amount, unit }) => `más alcohol: ${amount} ${unit}`,
  "grid-key": "Con recuadro: como se registró. Subrayado: un veredicto distinto de ese.",

  "turning-title": "Cuánto haría falta",
  "turning-nothing": "Ningún cambio de un solo número cambiaría el veredicto.",
  "turning-reading": ({ change, to, from, air, verdict }) =>
    `Lectura ${change} % (${to} en lugar de ${from}): ${air} %, ${verdict}.`,
  "turning-cups": ({ change, to, from, air, verdict }) =>
    `Vasos ${change} (${to} en lugar de ${from}): ${air} %, ${verdict}.`,
  "turning-alcohol": ({ change, unit, to, from, air, verdict }) =>
    `Alcohol ${change} ${unit} (${to} en lugar de ${from}): ${air} %, ${verdict}.`,
};
