import type { ruleMessages as english } from "../english/rules";
import type { SameSentences } from "../sentence";

/** The sentence of each rule, under the rule's own id. */
export const ruleMessages: SameSentences<typeof english> = {
  "foam-over-limit": ({ foam, limit }) =>
    `${foam} divisiones de espuma son más que las ${limit} permitidas. La prueba queda anulada: repítala con más alcohol.`,
  "slow-to-settle": ({ minutes, limit }) =>
    `el nivel tardó ${minutes} minutos en estabilizarse, más que los ${limit} permitidos. La prueba queda anulada: repítala con más alcohol.`,
  "readings-disagree": ({ third, second }, n) =>
    `La tercera lectura, ${third} %, difiere de la segunda, ${second} %, en más de ${n("0.25")} %. La prueba queda anulada: repítala con más alcohol.`,
  "packed-concrete-left":
    "quedó en el tazón concreto compactado, sin desprender. La prueba queda anulada: repítala e invierta el medidor hasta que todo se suelte.",
  "reading-missing":
    "no hay lectura del medidor. Anótela, o borre la fila si no se hizo la prueba.",
  "second-reading-missing":
    "falta la segunda lectura. Anote la lectura que se tomó después de rodar otra vez el medidor.",
  "third-reading-missing": ({ second, first }, n) =>
    `La segunda lectura, ${second} %, difiere de la primera, ${first} %, en más de ${n("0.25")} %, y no hay tercera. Anote la tercera lectura.`,
  "alcohol-missing":
    "falta la cantidad de alcohol, así que no se puede aplicar corrección. Anótela, o 0 si no hubo.",
  "negative-value": ({ value }) =>
    `${value} es menor que cero, lo que no puede ser. Revise de nuevo el registro.`,
  "reported-air-wrong": ({ reported, air, reading, subtracted, cups }, n) =>
    `se informa ${reported} %, pero el registro da ${air} %: lectura ${reading} menos ${subtracted} por alcohol más ${cups} por vasos, al ${n("0.25")} más cercano.`,
  "below-specification": ({ air, limit }) =>
    `El contenido de aire, ${air} %, está por debajo del límite inferior de ${limit} %. Decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "above-specification": ({ air, limit }) =>
    `El contenido de aire, ${air} %, está por encima del límite superior de ${limit} %. Decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "reported-below": ({ air, limit }) =>
    `El aire informado, ${air} %, está por debajo del límite inferior de ${limit} %. No hay lecturas con que verificarlo; decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "reported-above": ({ air, limit }) =>
    `El aire informado, ${air} %, está por encima del límite superior de ${limit} %. No hay lecturas con que verificarlo; decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "readings-not-in-sheet":
    "la hoja no registra lecturas del medidor, así que el aire que informa no se puede verificar y sus pruebas están incompletas. Lo demás que registra se revisó.",
  "alcohol-not-in-sheet": (_, n) =>
    `La hoja no tiene columna para el alcohol, así que todos los resultados se calculan sin corrección. Desde ${n("2.5")} pt (40 oz, ${n("1.2")} L) serían menores: agregue una columna como Alcohol (oz).`,
  "agreement-not-recorded":
    "la hoja registra una sola lectura por prueba, así que no se puede juzgar si dos lecturas concordaron. Registre la primera y la segunda lectura.",
  "readings-between-missing": ({ tests }, n) =>
    `la primera lectura y la final difieren en más de ${n("0.25")} %, y en la hoja no hay lecturas intermedias, así que no se puede juzgar si dos lecturas concordaron. Pruebas con eso: ${tests}. Registre todas las lecturas que se tomaron.`,
  leak: "el medidor tuvo fugas. La prueba queda anulada: elimine la fuga y repítala.",
  "alcohol-added-late":
    "se agregó alcohol después de llenar el medidor hasta cero. La prueba queda anulada: repítala con todo el alcohol antes de ajustar el cero.",
  "wrong-method-for-aggregate": ({ method, aggregate }) =>
    `el método de presión, “${method}”, cuenta también el aire dentro del agregado ${aggregate}. La prueba no vale: repítala por el método volumétrico.`,
  "other-method": ({ method }) =>
    `“${method}” no es el método volumétrico, así que aquí no se juzga el aire de esta prueba.`,
  "cups-not-needed": ({ level, cups, end }) =>
    `el nivel estaba en ${level} % con los vasos incluidos (${cups}), y la escala llega a ${end} %. Sin vasos habría estado en la escala: cuéntelos de nuevo.`,
  "short-inversion": ({ seconds, least }) =>
    `${seconds} s de inversión son menos que los ${least} s que pide el método. Puede haber quedado aire en el concreto.`,
  "long-inversion": ({ seconds, most }) =>
    `${seconds} s invertido son más que los ${most} s permitidos cada vez. Puede haberse atorado agregado en el cuello.`,
  "short-roll": ({ seconds }) =>
    `${seconds} s de rodado son menos que el minuto que pide el método. Puede haber quedado aire en el concreto.`,
  "little-water": ({ value, unit, least }) =>
    `${value} ${unit} de agua antes del alcohol son menos que los ${least} ${unit} que pide el método. Revise de nuevo el registro.`,
  "other-alcohol-strength": ({ usual, percent }) =>
    `la corrección es para alcohol al ${usual} %, no al ${percent} %. Revise la botella y el registro.`,
  "alcohol-over-capacity": ({ water, unit, most, value }) =>
    `con ${water} ${unit} de agua al principio, en una sección superior del tamaño mínimo caben ${most} ${unit} de alcohol, no ${value} ${unit}. Revise la cantidad, o vea qué corrección corresponde al medidor más grande.`,
  "interpolated-correction": ({ value, unit, subtracted }) =>
    `${value} ${unit} está entre dos filas de la tabla de corrección. Se interpoló ${subtracted} %.`,
  "off-grid-reading": ({ value, below, above }, n) =>
    `${value} % está entre dos divisiones, ${below} y ${above}. La escala se lee al ${n("0.25")}; este resultado se basa en una estimación.`,
  "called-void": ({ written, header }) =>
    `El técnico da por anulada la prueba: “${written}” en la columna “${header}”. No da un contenido de aire; repítala.`,
  "may-be-called-void": ({ written, header }) =>
    `“${written}” en la columna “${header}” se puede leer de dos maneras: que la prueba está anulada, u otra cosa. Escriba “prueba anulada” si lo está, o diga a qué se refiere.`,
  "unit-does-not-fit": ({ value, unit, low, high, otherUnit }) =>
    `no puede ser ${value} ${unit}, está entre ${low} y ${high} ${unit}; parece estar en ${otherUnit}. Escriba la unidad detrás del número, o corrija el encabezado.`,
  "value-in-no-unit": ({ value, unit, low, high }) =>
    `no puede ser ${value} ${unit}, está entre ${low} y ${high} ${unit}. Vea de nuevo el registro.`,
  "limits-in-some-rows": ({ count }) =>
    `algunas pruebas no tienen límites, aunque otras sí, así que no se compararon con nada; pruebas así: ${count}. Escriba los límites en cada fila.`,
  "may-tell-of-fault": ({ written, header }) =>
    `“${written}” en la columna “${header}” habla de algo que puede anular la prueba. Escriba “prueba anulada” si la anula; si no hubo nada, escríbalo allí con “sin …”, por ejemplo “sin fugas”.`,
  "final-reading-wrong": ({ recorded, reading }) =>
    `se anotó ${recorded} % como final, pero las lecturas dan ${reading} %. Corríjalo, y vea qué se calculó a partir de ello.`,
  "void-test-reported": ({ reported }) =>
    `se informa ${reported} %, pero la prueba está anulada. Quite el resultado, e informe el de la repetición.`,
  "void-without-repeat":
    "la prueba está anulada, y en la hoja no hay una prueba posterior de la misma muestra. Repítala, o anote la repetición más abajo.",
  "repeat-without-more-alcohol": ({ before, unit, after }) =>
    `la prueba anterior se anuló con ${before} ${unit} de alcohol, y esta repetición usó ${after} ${unit}. Repita con más alcohol una prueba anulada.`,
  "stale-sample": ({ minutes, most }) =>
    `la prueba comenzó ${minutes} minutos después de tomarse la última porción de la muestra; se permiten ${most}. Revise las horas, o tome otra muestra.`,
  "sampling-took-long": ({ minutes, most }) =>
    `el muestreo tardó ${minutes} minutos desde la primera porción hasta la última; se permiten ${most}. Revise las horas, o tome otra muestra.`,
  "times-out-of-order": ({ time, before, what }) =>
    `${time} es antes de ${before}, la hora de “${what}”. Revise ambas horas.`,
  "meter-found-out": ({ failed, since, tests }) =>
    `el medidor no pasó su verificación del ${failed}; la pasó por última vez el ${since}. Los resultados desde entonces están en duda: ${tests} en esta hoja. Averigüe cuánto se desviaba y júzguelos de nuevo.`,
  "meter-found-out-since-ever": ({ failed, tests }) =>
    `el medidor no pasó su verificación del ${failed}, y la hoja no muestra ninguna anterior que haya pasado. Sus resultados anteriores están en duda: ${tests} en esta hoja. Averigüe desde cuándo y cuánto se desviaba.`,
  "meter-check-overdue": ({ checked, tested, tests }) =>
    `el medidor se verificó por última vez el ${checked}, más de un año antes de la prueba del ${tested}. Pruebas de la hoja que dependen de ello: ${tests}. Mande verificar el medidor.`,
  "wet-sieving-due": ({ size, unit, most }) =>
    `un agregado de ${size} ${unit} es mayor que los ${most} ${unit} que admite el tazón. Retírelo por cribado en húmedo, y registre que se hizo.`,
  "check-test-due":
    "el resultado está fuera de la especificación, y en la hoja no hay una prueba de verificación. Haga una de inmediato sobre otra porción de la misma muestra, o anótela más abajo.",
  "check-test-failed": ({ check, first }) =>
    `La prueba de verificación, ${check} %, también está fuera de la especificación, después de ${first} % al principio. Por la regla de la prueba de verificación de ASTM C94 el concreto no cumple, y los dos resultados no se promedian; vea si la especificación indica otra regla.`,
  "on-limit": ({ air }) =>
    `dentro, sobre el límite: el contenido de aire es ${air} %, y el límite mismo está dentro. Aquí decide una sola división del cuello: cuide que las lecturas se tomen con esmero.`,
  "near-limit": ({ air, margin }) =>
    `El contenido de aire, ${air} %, está dentro de la especificación por ${margin} %. Aquí decide una sola división del cuello: cuide que las lecturas se tomen con esmero.`,
  "duplicate-test": ({ before }) =>
    `esta fila dice lo mismo que la fila ${before} en todas las columnas que se reconocieron. Quite una de las dos si la prueba se hizo una sola vez.`,
  "methods-disagree": ({ gravimetric, volumetric }) =>
    `el peso unitario da ${gravimetric} % de aire y el medidor ${volumetric} %. Revise las masas dosificadas, la tara, la humedad del agregado y las lecturas.`,
};
