import type { quantityNames as english } from "../english/quantities";
import type { SameSentences } from "../sentence";

/** What a quantity is called, where a sentence begins with it. */
export const quantityNames: SameSentences<typeof english> = {
  "quantity-density": "peso unitario",
  "quantity-concreteTemperature": "temperatura del concreto",
  "quantity-airTemperature": "temperatura del aire",
  "quantity-waterTemperature": "temperatura del agua",
  "quantity-wind": "velocidad del viento",
  "quantity-bowl": "volumen del tazón",
  "quantity-strength": "resistencia",
  "quantity-strengthDeviation": "desviación estándar",
  "quantity-nominalSlump": "revenimiento nominal",
  "quantity-slump": "revenimiento",
  "quantity-aggregateSize": "tamaño de agregado",
};
