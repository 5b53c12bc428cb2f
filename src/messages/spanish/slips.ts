import type { slipMessages as english } from "../english/slips";
import type { SameSentences } from "../sentence";

/** Which slip explains a wrong result, under the slip's own id. `{reported}` is the reported air. */
export const slipMessages: SameSentences<typeof english> = {
  "correction-forgotten": ({ reported, subtracted }) =>
    `${reported} % resulta cuando se olvida la corrección por alcohol, ${subtracted}. Réstela.`,
  "correction-added": ({ reported, subtracted }) =>
    `${reported} % resulta cuando se suma la corrección por alcohol, ${subtracted}. Réstela.`,
  "correction-not-due": ({ reported, subtracted, amount, unit }, n) =>
    `${reported} % resulta cuando se resta ${subtracted} por ${amount} ${unit} de alcohol. Con menos de ${n("2.5")} pt, 40 oz o ${n("1.2")} L no se resta nada.`,
  "unit-mistaken": ({ reported, amount, unit, other, subtracted }) =>
    `${reported} % resulta cuando ${amount} ${unit} de alcohol se leen como ${amount} ${other}, con una corrección de ${subtracted}. Vea cuál unidad es la correcta.`,
  "aggregate-factor-subtracted": ({ reported, factor }) =>
    `${reported} % resulta cuando se resta el factor de corrección por agregado, ${factor}. Ese factor es solo del método de presión.`,
  "cups-forgotten": ({ reported, cups }) =>
    `${reported} % resulta cuando se olvidan los vasos calibrados, ${cups}. Súmelos.`,
  "cups-counted-twice": ({ reported, cups }) =>
    `${reported} % resulta cuando los vasos calibrados, ${cups}, se suman dos veces. Súmelos una sola vez.`,
  "cups-subtracted": ({ reported, cups }) =>
    `${reported} % resulta cuando se restan los vasos calibrados, ${cups}. Súmelos.`,
  "first-reading-used": ({ reported, used, reading }) =>
    `${reported} % resulta cuando se usa una lectura anterior, ${used} %. La final es ${reading} %.`,
  "readings-averaged": ({ reported, average, reading }) =>
    `${reported} % resulta cuando las lecturas se promedian en ${average} %. Solo cuenta la final, ${reading} %.`,
  "recorded-final-used": ({ reported, used, reading }) =>
    `${reported} % resulta de la lectura final anotada, ${used} %. Las lecturas dan ${reading} %.`,
  "rounded-to-other-step": ({ reported, unrounded, step }, n) =>
    `${reported} % resulta cuando ${unrounded} % se redondea al ${step} % más cercano. Redondee al ${n("0.25")} % más cercano.`,
  "digits-swapped": ({ reported, air }) =>
    `${reported} % es ${air} % con dos cifras intercambiadas. Escríbalo de nuevo.`,
  "half-rounded-up": ({ reported, unrounded }, n) =>
    `${reported} % resulta cuando ${unrounded} %, a la mitad entre dos incrementos de ${n("0.25")} %, se redondea hacia arriba. Redondéelo al incremento par.`,
  "left-unrounded": ({ reported }, n) =>
    `${reported} % resulta cuando no se redondea. Redondee el resultado al ${n("0.25")} % más cercano.`,
  unexplained: ({ reported }) =>
    `Ningún error de los conocidos aquí da ${reported} %. Calcule de nuevo el resultado a partir de las lecturas, los vasos y el alcohol.`,
};
