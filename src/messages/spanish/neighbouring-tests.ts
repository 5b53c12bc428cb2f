import type { neighbouringTestsMessages as english } from "../english/neighbouring-tests";
import type { SameSentences } from "../sentence";

/** Sentences about the other tests of the sample: density, pressure air, water, evaporation, strength … */
export const neighbouringTestsMessages: SameSentences<typeof english> = {
  "system-unknown": ({ value }) => `“${value}” no es un sistema de unidades. Indique "us" o "si".`,
  "value-in-other-system": ({ quantity, value, unit, other, otherUnit, low, high }) =>
    `${quantity}: ${value} ${unit} no puede ser. Indique "${other}" como unidades si está en ${otherUnit}; en ${unit} va de ${low} a ${high}.`,
  "value-cannot-be": ({ quantity, value, unit, low, high, other, otherUnit }) =>
    `${quantity}: ${value} ${unit} no puede ser; va de ${low} a ${high} ${unit}. Revise el valor, e indique "${other}" como unidades si está en ${otherUnit}.`,
  "not-above-zero": ({ value }) => `${value} no puede ser. Indique un número mayor que 0.`,
  "below-zero": ({ value }) => `${value} no puede ser. Indique 0 o más.`,
  "not-a-percentage": ({ value }) => `${value} no puede ser. Indique un porcentaje de 0 a 100.`,
  "size-looks-like-date": ({ value }, n) =>
    `${value} es el número de una fecha; Excel convierte 3/4 en una fecha. Escriba el tamaño como ${n("0.75")}, o como texto: 3/4 in.`,

  "full-not-heavier": ({ full, empty }) =>
    `El recipiente lleno, ${full}, no pesa más que el vacío, ${empty}. Revise ambas masas.`,
  "yield-unit-unknown": ({ value }) =>
    `“${value}” no es una unidad de rendimiento. Indique "ft3", "yd3" o "m3".`,
  "relative-yield-cannot-be": ({ yielded, design }) =>
    `No puede haber un rendimiento de ${yielded} para un volumen de diseño de ${design}. Indique ambos en la misma unidad de volumen.`,
  "density-above-theoretical": ({ density, theoretical }) =>
    `El peso unitario, ${density}, es mayor que el teórico, ${theoretical}: habría menos que nada de aire. Revise las masas y la dosificación.`,

  "pressure-air-below-zero": ({ gauge, factor }) =>
    `El contenido de aire resulta menor que cero: manómetro ${gauge} % menos un factor de corrección por agregado de ${factor} %. Revise ambos.`,
  "mortar-over-passing": ({ mortar, passing }) =>
    `El volumen de mortero, ${mortar}, es mayor que todo lo que pasa la criba, ${passing}. Revise ambos.`,
  "suspended-not-lighter": ({ suspended, saturated }) =>
    `El espécimen pesa ${suspended} en el agua y ${saturated} saturado en el aire. En el agua debe pesar menos: revise ambos.`,
  "dried-over-saturated": ({ dried, saturated }) =>
    `El espécimen pesa ${dried} seco y ${saturated} saturado. Seco no puede pesar más: revise ambos.`,

  "cup-and-bowl-in-two-units": ({ cup, bowl, percent }) =>
    `Un vaso de ${cup} en un tazón de ${bowl} sería ${percent} % de él, lo que no puede ser. Indique ambos volúmenes en la misma unidad.`,

  "specified-air-source-unknown": ({ value, names }) =>
    `“${value}” no es una de las tablas que hay aquí. Indique una de estas: ${names}.`,
  "exposure-not-in-table": ({ value, source, exposures }) =>
    `“${value}” no es una exposición de la tabla de ${source}. La tabla tiene: ${exposures}.`,
  "size-not-in-table": ({ source, value, sizes }) =>
    `la tabla de ${source} no tiene un tamaño de agregado de ${value}. La tabla tiene: ${sizes}.`,

  "specified-not-one":
    "los resultados tienen más de una resistencia especificada. Indique los de una sola mezcla a la vez.",
  "mean-takes-in-unreadable":
    "La media de tres incluye un resultado que no se puede leer. Corrija primero ese resultado.",
  "deviation-from-too-few": ({ tests, least }) =>
    `una desviación estándar de tan pocas pruebas (${tests}) no basta; se necesitan al menos ${least}. Use el incremento que da el reglamento para una mezcla sin registro.`,
  "tests-not-whole": ({ value }) =>
    `${value} no es un número de pruebas. Indique un número entero.`,
  "cylinders-not-pairs-or-triples": ({ columns }) =>
    `el número de columnas es ${columns}. Indique una prueba por fila, 2 o 3 cilindros uno junto a otro.`,
  "cylinders-row": ({ row }) => `cilindros, fila ${row}`,
  "cylinders-not-of-one-test": ({ row, least, most }) =>
    `la fila ${row} contiene ${least} y ${most}, que no pueden ser cilindros de una misma prueba. Indique una prueba en cada fila, todo en una misma unidad, y solo sus resistencias.`,
  "cylinder-alone": ({ row }) =>
    `la fila ${row} tiene un solo cilindro, que no da rango. Indique 2 o 3 en cada fila, o deje la fila en blanco.`,
  "no-cylinders": "el rango está en blanco. Indique 2 o 3 cilindros en cada fila.",

  "methods-disagree-weighing": ({ gravimetric, volumetric, yielded }) =>
    `el peso unitario da ${gravimetric} % de aire y el medidor ${volumetric} %. El rendimiento, ${yielded}, se aparta hacia el mismo lado y depende del mismo peso unitario: revise primero la tara, la masa lleno y el volumen del recipiente.`,
  "methods-disagree-batch": ({ gravimetric, volumetric, yielded }) =>
    `el peso unitario da ${gravimetric} % de aire y el medidor ${volumetric} %. El rendimiento, ${yielded}, se aparta hacia el otro lado: revise primero las masas dosificadas y la humedad del agregado.`,
  "methods-disagree-meter": ({ gravimetric, volumetric, yielded }) =>
    `el peso unitario da ${gravimetric} % de aire y el medidor ${volumetric} %. El rendimiento, ${yielded}, está cerca de 1 y respalda al peso unitario: revise primero las lecturas del medidor.`,
  "density-below-specification": ({ density, unit, limit }) =>
    `el peso unitario fresco, ${density} ${unit}, es menor que los ${limit} ${unit} permitidos. Revise el contenido de aire y el pesado; decide una prueba de verificación.`,
  "density-above-specification": ({ density, unit, limit }) =>
    `el peso unitario fresco, ${density} ${unit}, es mayor que los ${limit} ${unit} permitidos. Revise el contenido de aire y el pesado; decide una prueba de verificación.`,
  "slump-outside-tolerance": ({ slump, unit, nominal, low, high }) =>
    `un revenimiento de ${slump} ${unit} está demasiado lejos de los ${nominal} ${unit} especificados; se permiten de ${low} a ${high} ${unit}. Decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "slump-below-limit": ({ slump, unit, limit }) =>
    `el revenimiento, ${slump} ${unit}, es menor que los ${limit} ${unit} especificados. Decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "slump-above-limit": ({ slump, unit, limit }) =>
    `el revenimiento, ${slump} ${unit}, es mayor que los ${limit} ${unit} especificados. Decide una prueba de verificación sobre otra porción de la misma muestra.`,
  "concrete-too-warm": ({ temperature, unit, limit }) =>
    `el concreto, a ${temperature} ${unit}, está más caliente que ${limit} ${unit}. Vea qué dice la especificación sobre clima cálido.`,
  "concrete-too-cold": ({ temperature, unit, limit }) =>
    `el concreto, a ${temperature} ${unit}, está más frío que ${limit} ${unit}. Vea qué dice la especificación sobre clima frío.`,
  "measure-too-small": ({ size, unit, ft3, litres }) =>
    `para agregado de ${size} ${unit} el recipiente debe contener al menos ${ft3} ft³ (${litres} L). No se puede confiar en el peso unitario: use un recipiente mayor.`,
  "bowl-too-small": ({ bowl, least }) =>
    `un tazón de ${bowl} es menor que los ${least} que pide el método. Calibre de nuevo el tazón, o use otro medidor.`,
  "cup-out-of-tolerance": ({ percent, low, high }, n) =>
    `el vaso calibrado contiene ${percent} % del tazón; se permiten de ${low} a ${high} %. Cada vaso cuenta como ${n("1.00")} %: calíbrelo de nuevo.`,
  "humidity-as-share": ({ value, percent }) =>
    `una humedad de ${value} parece ser ${percent} % en una celda con formato de porcentaje. Escriba ${percent} en una celda con formato de número.`,
  "evaporation-high": ({ rate, unit, from }) =>
    `se evaporan ${rate} ${unit} de agua, y se requiere cuidado desde ${from} ${unit}. Dé sombra, proteja del viento o rocíe niebla sobre el concreto, y comience el curado de inmediato.`,
  "pressure-check-due": ({ factor, from }) =>
    `con un factor de corrección por agregado de ${factor} %, ${from} % o más, el medidor de presión se verifica con el método volumétrico. Haga una prueba volumétrica.`,
  "pressure-check-may-be-due": ({ slump, unit, most }) =>
    `con un revenimiento de ${slump} ${unit}, ${most} ${unit} o menos, puede ser necesario verificar el medidor de presión con el método volumétrico. Vea qué dice la especificación.`,
  "too-many-revolutions": ({ revolutions, most }) =>
    `el tambor giró ${revolutions} veces; se permiten ${most}. Vea si el comprador aceptó más.`,
  "discharged-late": ({ minutes, most }) =>
    `la descarga terminó ${minutes} minutos después de la dosificación; se permiten ${most}. Vea si el comprador aceptó más.`,
};
