import type { decisionMessages as english } from "../english/decisions";
import type { SameSentences } from "../sentence";

/** Sentences about what follows a result: disposition, bias, tests due, registers, water. */
export const decisionMessages: SameSentences<typeof english> = {
  "disposition-rule-unknown": ({ value, names }) =>
    `“${value}” no es una de las reglas que hay aquí. Indique una de estas: ${names}.`,
  "far-below-zero": ({ value }) =>
    `un resultado no puede estar ${value} fuera. Indique, sin signo, cuánto fuera de sus límites es muy fuera.`,
  "left-below-zero": ({ value }) =>
    `no puede quedar ${value}. Indique lo que queda del tiempo o de las revoluciones que permite la remisión, 0 si no queda nada.`,
  "reading-not-decided":
    "La lectura está en blanco, y sin ninguna nada acota el contenido de aire. Indique la lectura final del medidor, o la primera.",
  "air-takes-all": ({ air }) =>
    `un contenido de aire de ${air} % no deja concreto. Indique un porcentaje desde 0 hasta menos de 100.`,
  "density-not-by-air": ({ density, reference }) =>
    `El aire por sí solo no puede llevar un peso unitario de ${reference} a ${density}. Indique ambos en la misma unidad, y revise ambos.`,
  "nobody-to-compare":
    "No se puede comparar a nadie: ninguna mezcla tiene pruebas de dos personas. Indique una columna en la que dos nombres o más prueben la misma mezcla.",
  "mix-of-test-missing":
    "la celda está en blanco, y una prueba se compara solo dentro de su mezcla; la de una muestra dividida, dentro de su muestra. Indíquela.",
  "times-needed": ({ rule }) =>
    `La regla “${rule}” cuenta por horas, y falta la hora de una carga. Indique cada día con su hora, u otra regla.`,
  "tested-or-zero":
    "0 se puede leer de dos maneras: que no se hizo ninguna prueba, o que una dio 0. Deje la celda en blanco donde no se hizo ninguna.",
  "tests-rule-unknown": ({ value, names }) =>
    `“${value}” no es una de las reglas de muestreo que hay aquí. Indique una de estas: ${names}.`,
  "volumes-needed": ({ rule }) =>
    `La regla “${rule}” cuenta por volumen, y falta un volumen. Indique el volumen de cada carga.`,
  "register-columns": ({ columns }) =>
    `el registro tiene ${columns} ${columns === "1" ? "columna" : "columnas"}. Indique una junto a otra la identificación y el día de la verificación, y en una tercera los meses hasta la siguiente si son distintos.`,
  "register-row": ({ row }) => `registro, fila ${row}`,
  "register-blank":
    "el registro está en blanco. Indique sus identificaciones y las fechas de sus últimas verificaciones.",
  "interval-not-whole": ({ value }) =>
    `no puede haber un intervalo de ${value} meses. Indique meses enteros, de 1 a 120.`,
  "register-current": "vigente",
  "register-due": ({ days }) =>
    days === "0" ? "vence hoy" : `vence en ${days} ${days === "1" ? "día" : "días"}`,
  "register-overdue": ({ days }) => `vencido hace ${days} ${days === "1" ? "día" : "días"}`,
  "register-unknown": "se desconoce",
  "en206-quantity-unknown": ({ value }) =>
    `“${value}” no es una magnitud para la que EN 206 tenga aquí un resultado individual. Indique "air", "lightweight density" o "w/c".`,
  "by-not-in-sheet": ({ value }) =>
    `“${value}” no es ninguna columna de la tabla. Indique "mix", "day", "meter", "load", "method", "technician" o "plant", o el encabezado de una columna tal como está.`,
  "moulded-late": ({ minutes, most }) =>
    `el moldeo comenzó ${minutes} minutos después de tomarse la última porción de la muestra; se permiten ${most}. Revise las horas, o tome otra muestra para los especímenes.`,
  "sampled-from-an-end": ({ share, from, to }) =>
    `la muestra se tomó cuando se había descargado ${share} % de la carga; una muestra de aceptación se toma entre ${from} y ${to} %. Tome otra muestra de la parte media de la carga.`,
  "water-added-again": ({ times }) =>
    `se agregó agua ${times} veces; se agrega una sola vez, a la llegada. Vea quién lo autorizó, y calcule la a/mc con toda el agua.`,
  "too-few-revolutions-after": ({ turns, least }) =>
    `el tambor giró ${turns} veces después de la adición; se piden al menos ${least} a velocidad de mezclado. Siga mezclando y pruebe de nuevo.`,
  "too-few-cylinders": ({ cylinders, least, size }) =>
    `${cylinders} de ${size} son menos que los ${least} cilindros cuyo promedio es una prueba de resistencia. Elabore los que faltan con la misma muestra, o indique que no hay prueba de resistencia.`,
  "too-few-cylinders-of-any-size": ({ cylinders, large, small }) =>
    `${cylinders} cilindro es muy poco: una prueba de resistencia es el promedio de ${large} de 6 × 12 in o ${small} de 4 × 8 in. Elabore los que faltan con la misma muestra, o indique que no hay prueba de resistencia.`,
  "cylinders-apart": ({ count, range, most }) =>
    `Los ${count} cilindros de esta muestra difieren en ${range} % de su promedio; no debería pasarse de ${most} %. Revise cómo se elaboraron, cabecearon y ensayaron antes de usar el promedio.`,
  "cylinders-apart-on-average": ({ pairs, mean, most, unit }) =>
    `Los ${pairs} pares de cilindros difieren en promedio en ${mean} ${unit}; hasta ${most} ${unit} se considera aceptable. Revise cómo se elaboran, curan y ensayan los especímenes.`,
  "water-cement-over-limit": ({ ratio, most }) =>
    `La relación a/mc es ${ratio} con toda el agua; lo máximo permitido es ${most}. Retenga la carga y pregunte al ingeniero.`,
  "water-cement-over-limit-on-site": ({ ratio, most }) =>
    `La relación a/mc es ${ratio} con toda el agua, también la agregada en obra; lo máximo permitido es ${most}. Retenga la carga y pregunte al ingeniero.`,
  "water-cement-not-compared":
    "La relación a/mc no se comparó con su límite, porque el agua y el cementante no están en un mismo sistema de unidades. Escriba la unidad de cada uno en su encabezado: lb o gal, o kg o L.",
  "cured-too-cold": ({ temperature, limit, unit }) =>
    `los especímenes bajaron hasta ${temperature} ${unit}; en el curado inicial ${limit} ${unit} es lo mínimo. Su resistencia puede ser menor que la del concreto: indíquelo junto a ella.`,
  "cured-too-warm": ({ temperature, limit, unit }) =>
    `los especímenes subieron hasta ${temperature} ${unit}; en el curado inicial ${limit} ${unit} es lo máximo. Su resistencia posterior puede ser menor que la del concreto: indíquelo junto a ella.`,
  "density-and-air": ({ off, byAir, left, air, aim, unit }) =>
    `el peso unitario está a ${off} ${unit} de su objetivo. ${air} % de aire en lugar de ${aim} % explica ${byAir}; quedan ${left} ${unit} para la humedad, la dosificación o el pesado.`,
  "decided-all-the-same": ({ least, most, verdict }) =>
    `falte lo que falte, el contenido de aire ${least === most ? `es de ${least}` : `está entre ${least} y ${most}`} %, es decir, ${verdict}. La carga está decidida; complete el registro de todos modos.`,
  "decided-within": "dentro de los límites",
  "decided-below": "por debajo de los límites",
  "decided-above": "por encima de los límites",
  "places-of-sampling": ({ mix, means }) =>
    `${mix === "" ? "las pruebas" : `las pruebas de ${mix}`} se muestrearon en lugares distintos, con estos contenidos medios de aire: ${means}. Compárelas por separado.`,
  "mean-of-place": ({ place, mean, tests }) => `${place} ${mean} % (${tests})`,
  "exposure-without-limit": ({ value, classes }) =>
    `“${value}” no tiene límite de a/mc en la tabla de ACI 318-19. La tabla tiene: ${classes}; o indique el límite como número.`,
  "water-cement-limit-cannot-be": ({ value, low, high }, n) =>
    `no puede haber un límite de a/mc de ${value}: está entre ${low} y ${high}. Escríbalo como ${n("0.45")}, o deje la celda en blanco si no hay ninguno.`,
  "water-cement-cannot-be": ({ ratio }) =>
    `No puede haber una a/mc de ${ratio}. Indique toda el agua y el material cementante del mismo volumen, en la misma unidad de masa.`,
};
