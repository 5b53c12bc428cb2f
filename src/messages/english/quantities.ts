/** What a quantity is called, with its article, where a sentence begins with it. */
export const quantityNames = {
  "quantity-density": "a density",
  "quantity-concreteTemperature": "a concrete temperature",
  "quantity-airTemperature": "an air temperature",
  "quantity-waterTemperature": "a water temperature",
  "quantity-wind": "a wind speed",
  "quantity-bowl": "a bowl volume",
  "quantity-strength": "a strength",
  "quantity-strengthDeviation": "a standard deviation",
  "quantity-nominalSlump": "a nominal slump",
  "quantity-slump": "a slump",
  "quantity-aggregateSize": "an aggregate size",
} as const;
