/** The ways to find the air content of fresh concrete. */
export type AirMethod = "volumetric" | "pressure" | "gravimetric";

const NAMES: readonly (readonly [AirMethod, RegExp])[] = [
  ["volumetric", /volum|roller|\bc[\s-]*173|\bt[\s-]*196/i],
  ["pressure", /press|type\s*[ab]\b|\bc[\s-]*231|\bt[\s-]*152/i],
  ["gravimetric", /gravim|\bc[\s-]*138|\bt[\s-]*121/i],
];

/** The method that a text names; `undefined` where it names none or more than one. */
export function airMethodNamed(text: string): AirMethod | undefined {
  const named = NAMES.filter(([, name]) => name.test(text));
  return named.length === 1 ? named[0]![0] : undefined;
}
