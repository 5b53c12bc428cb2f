import type { volumetricAirMessages as english } from "../english/volumetric-air";
import type { SameSentences } from "../sentence";

/** Sentences about the volumetric air method. */
export const volumetricAirMessages: SameSentences<typeof english> = {
  "reading-negative": ({ value }) =>
    `una lectura del medidor de ${value} % no puede ser; la escala comienza en 0. Revise de nuevo el registro.`,
  "reading-beyond-scale": ({ value, end }) =>
    `una lectura del medidor de ${value} % está más allá del ${end} % que alcanza con seguridad la escala del cuello. Agregue vasos calibrados de agua hasta que el nivel esté en la escala, e indique los vasos por separado.`,
  "reading-as-share": ({ value, percent }) =>
    `una lectura del medidor de ${value} parece ser ${percent} % en una celda con formato de porcentaje. Escriba ${percent} en una celda con formato de número.`,
  "cups-negative": ({ value }) =>
    `no puede haber ${value} vasos calibrados. Indique el número de vasos agregados, o 0.`,
  "cups-not-whole-number": ({ value }, n) =>
    `${value} no es un número entero de vasos calibrados. Solo cuentan vasos llenos, cada uno ${n("1.00")} %.`,
  "air-beyond-most": ({ cups, air, most }, n) =>
    `con ${cups} vasos calibrados el contenido de aire resulta ${air} %, y ningún concreto que se prueba así tiene más de ${most} %. Cuente de nuevo los vasos; cada uno es ${n("1.00")} %.`,
  "alcohol-negative": ({ value }) =>
    `no puede haber una cantidad de alcohol de ${value}. Indique la cantidad agregada, o 0.`,
  "alcohol-beyond-table": ({ end, unit, value }) =>
    `la tabla de corrección termina en ${end} ${unit}, y ${value} ${unit} está más allá, así que no se puede dar corrección. Revise de nuevo la cantidad y su unidad.`,
  "air-below-zero": ({ air, reading, subtract }) =>
    `El contenido de aire resulta ${air} %, menor que cero: lectura ${reading} % menos ${subtract} % por alcohol. Revise de nuevo la lectura y el alcohol.`,
  "second-reading-needed":
    "Hace falta una segunda lectura: ruede otra vez el medidor más o menos un minuto y léalo.",
  "third-reading-needed": ({ second, first }, n) =>
    `Hace falta una tercera lectura: la segunda, ${second} %, difiere de la primera, ${first} %, en más de ${n("0.25")} %.`,
  "readings-void": ({ third, second }, n) =>
    `La prueba queda anulada: la tercera lectura, ${third} %, difiere de la segunda, ${second} %, en más de ${n("0.25")} %. Repítala con más alcohol.`,
  "level-not-settled":
    "El nivel no se estabilizó en 6 minutos. La prueba queda anulada: repítala con más alcohol.",
  "level-not-yet-known": ({ minute }, n) =>
    `El nivel no se ha estabilizado en el minuto ${minute}, donde termina el registro. Regístrelo hasta que no cambie más de ${n("0.25")} % en 2 minutos, 6 minutos como máximo.`,
  "minutes-negative": ({ value }) =>
    `El minuto ${value} no puede ser. Cuente desde el final del rodado.`,
  "minutes-out-of-order": ({ value, before }) =>
    `El minuto ${value} viene después del minuto ${before}. Anote los niveles en el orden en que se leyeron.`,
};
