/** What a unit measures. */
export type Dimension =
  | "percent"
  | "liquid"
  | "duration"
  | "temperature"
  | "length"
  | "density"
  | "speed"
  | "divisions"
  | "yes-no"
  | "clock"
  | "bulk"
  | "mass"
  | "stress"
  | "dosage";

const SPELLINGS: readonly (readonly [Dimension, spellings: string, known?: string])[] = [
  ["percent", "% pct percent"],
  ["percent", "prozent pourcent porciento", "%"],
  ["liquid", "oz ozs ounce ounces floz pt pts pint pints l liter liters litre litres ltr"],
  ["liquid", "ml cc gal gallon gallons qt quarts cl dl"],
  ["liquid", "litro litros lts", "L"],
  ["liquid", "mililitro mililitros milliliter", "mL"],
  ["liquid", "onza onzas once onces unze unzen", "oz"],
  ["liquid", "pinta pintas pinte pintes chopine chopines", "pt"],
  ["duration", "min mins minute minutes s sec secs second seconds"],
  ["duration", "minuto minutos minuten mn", "min"],
  ["duration", "seg segs segundo segundos sek sekunde sekunden seconde secondes", "s"],
  ["temperature", "f °f degf fahrenheit c °c degc celsius"],
  ["length", "in inch inches mm cm"],
  ["length", "pulg pulgada pulgadas plg pouce pouces po zoll", "in"],
  ["density", "pcf"],
  ["speed", "mph kph kmh knots"],
  ["divisions", "div divs division divisions graduations"],
  [
    "divisions",
    "divisiones teilstriche teilstrich skt graduaciones grad grads striche strich",
    "divisions",
  ],
  ["yes-no", "yn jn"],
  ["bulk", "yd yds cy cuyd yd3 m3 cf ft3 cuft"],
  ["mass", "lb lbs kg g tons"],
  ["stress", "psi mpa kpa bar ksi lbf kips kip kn"],
];
/** What a word of a header measures, and the spelling that the readers of cells know. */
export const UNITS: ReadonlyMap<string, { readonly unit: string; readonly dimension: Dimension }> =
  new Map(
    SPELLINGS.flatMap(([dimension, spellings, known]) =>
      spellings
        .split(" ")
        .map((spelling) => [spelling, { unit: known ?? spelling, dimension }] as const),
    ),
  );

/** Units of several signs, in a text that is spelled out. */
export const COMPOSED: readonly (readonly [Dimension, RegExp])[] = [
  [
    "dosage",
    /\b(?:fl\.? ?oz|oz|ml|g|kg|lbs?|l) ?(?:\/|per) ?(?:cwt|100 ?(?:kg|lb)|cy|yd ?\^?3?|cu\.? ?yd|kg)(?!\w)/,
  ],
  ["stress", /\b(?:kgf?|k?n|lbs?|lbf|t) ?(?:\/|per) ?(?:cm|mm|m|in) ?\^? ?2(?!\w)/],
  ["density", /\b(?:kg ?m|lbs? ?ft) ?3(?!\w)/],
  [
    "density",
    /\b(?:lbs?|pounds?)\.? ?(?:\/|per) ?(?:cu\.? ?ft\.?|ft\.? ?\^?3?|cf|cubic foot)(?!\w)/,
  ],
  ["density", /\b(?:kgs?|g|t) ?(?:\/|per) ?(?:cu\.? ?m|[cd]?m ?\^?3?|l|ltr)(?!\w)/],
  ["speed", /\b(?:km ?\/ ?h|m ?\/ ?s|mi ?\/ ?h)(?!\w)/],
  [
    "yes-no",
    /\b(?:y ?\/ ?n|yes ?\/ ?no|si ?\/ ?no|j ?\/ ?n|ja ?\/ ?nein|o ?\/ ?n|oui ?\/ ?non)(?!\w)/,
  ],
  ["clock", /\b(?:hh?:mm|24 ?h(?:r|our)?|h:min)(?!\w)/],
  ["duration", /\b(?:mm?:ss|min:s(?:ec)?)(?!\w)/],
  ["temperature", /(?:° ?|\bdeg\.? |\bdegrees? )[fc](?!\w)/],
  [
    "bulk",
    /\b(?:cu\.? ?(?:ft|yd|in|m)\.?|(?:ft|yd|m) ?\^ ?3|cubic (?:feet|yards?|met(?:er|re)s?))(?!\w)/,
  ],
];
