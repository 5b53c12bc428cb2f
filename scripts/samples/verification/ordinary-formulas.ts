/*
 * Results of the worksheet functions by the ordinary formulas of a spreadsheet, written from the text
 * of the methods. A formula names its inputs by the letters of the arguments, {a} to {e}, in order.
 */

/** Half goes to the even step, which no ordinary function does. */
function toEvenStep(value: string, step: string): string {
  const steps = `ROUND((${value})/${step},9)`;
  return `IF(ROUND(${steps}-INT(${steps}),9)=0.5,2*ROUND(${steps}/2,0),ROUND(${steps},0))*${step}`;
}

/** Tanaka and others, 2001, in °C and kg/m³. */
function water(celsius: string): string {
  return `999.97495*(1-(${celsius}-3.983035)^2*(${celsius}+301.797)/(522528.9*(${celsius}+69.34881)))`;
}

/** 1 kg/m³ in lb/ft³: cubic metres in a cubic foot over kilograms in a pound. */
const POUNDS = "0.028316846592/0.45359237";
const US_WATER = (fahrenheit: string) => `${water(`((${fahrenheit}-32)/1.8)`)}*${POUNDS}`;

/** The rows of the correction table lie on a line; below 40 oz nothing counts. */
const CORRECTION_OZ = (ounces: string) => `IF(${ounces}<40,0,0.3*(${ounces}/16-2))`;

const AGREE = (one: string, other: string) => `ABS(${one}-${other})<=0.25`;

const FEW_TESTS =
  "IF({c}>=30,1,IF({c}>=25,1.03-(0.03/5)*({c}-25),IF({c}>=20,1.08-(0.05/5)*({c}-20),1.16-(0.08/5)*({c}-15))))";

const AMERICAN = "{0.375,0.5,0.75,1,1.5,2,3}";
const MODERATE = "{6,5.5,5,4.5,4.5,4,3.5}";
const SEVERE = "{7.5,7,6,6,5.5,5,4.5}";

/** What the ordinary formula of a case is built from. */
export const ORDINARY = {
  air: toEvenStep(`{a}+{b}-${CORRECTION_OZ("{c}")}`, "0.25"),
  correction: CORRECTION_OZ("{a}"),
  finalReading: `IF(${AGREE("{a}", "{b}")},{b},{c})`,
  nextReading: `IF(${AGREE("{a}", "{b}")},"final",IF({c}="","third reading",IF(${AGREE("{b}", "{c}")},"final","void")))`,
  evenStep: toEvenStep("{a}", "{b}"),

  density: "({a}-{b})/{c}",
  densityLitres: "({a}-{b})/({c}/1000)",
  quotient: "{a}/{b}",
  yardYield: "{a}/(27*{b})",
  gravimetricAir: "({a}-{b})/{a}*100",
  ovenDry: "({a}+{b}+1.2*{c})/{d}",
  measuredOvenDry: "{a}*62.3/({b}-{c})",
  measuredOvenDryMetric: "{a}*997/({b}-{c})",
  densityByAir: "{a}*(100-{c})/(100-{b})",
  airByDensity: "100-{c}/{a}*(100-{b})",
  equilibrium: "{a}+3",
  equilibriumMetric: "{a}+50",

  pressureAir: "{a}-{b}",
  fullMixture: "100*{a}*{b}/(100*({b}+{c})-{a}*{c})",
  mortar: "100*{a}*{b}/(100*{c}+{a}*({b}-{c}))",

  water: US_WATER("{a}"),
  waterMetric: water("{a}"),
  bowl: `{a}/(${US_WATER("{b}")})`,
  bowlMetric: `1000*{a}/(${water("{b}")})`,
  percent: "100*{a}/{b}",
  evaporation: "MAX(0,({a}^2.5-{c}/100*{b}^2.5)*(1+0.4*{d})/10^6)",
  evaporationMetric: "MAX(0,5*(({a}+18)^2.5-{c}/100*({b}+18)^2.5)*({d}+4)/10^6)",

  airF1: `INDEX(${MODERATE},MATCH({a},${AMERICAN},0))-IF({c}>5000,1,0)`,
  airF3: `INDEX(${SEVERE},MATCH({a},${AMERICAN},0))-IF({c}>5000,1,0)`,
  airF2Metric: `INDEX(${SEVERE},MATCH({a},{9.5,12.5,19,25,37.5,50,75},0))-IF({c}>35,1,0)`,
  airModerate: `INDEX(${MODERATE},MATCH({a},${AMERICAN},0))`,
  airCategory1:
    "(INDEX({6,5,5,4,4},MATCH({a},{10,14,20,28,40},0))+INDEX({9,8,8,7,7},MATCH({a},{10,14,20,28,40},0)))/2",
  airLeast: "4",

  required: `MAX({a}+1.34*${FEW_TESTS}*{b},IF({a}>5000,0.9*{a},{a}-500)+2.33*${FEW_TESTS}*{b})`,
  requiredMetric: `MAX({a}+1.34*${FEW_TESTS}*{b},IF({a}>35,0.9*{a},{a}-3.5)+2.33*${FEW_TESTS}*{b})`,

  compare: 'IF({a}<{b},"below",IF({a}>{c},"above","within"))',
  margin: "MIN({a}-{b},{c}-{a})",
  chance: "NORMSDIST(({c}-{a})/{d})-NORMSDIST(({b}-{a})/{d})",
  checkTest:
    'IF(AND({a}>={b},{a}<={c}),"accept",IF({d}="","check test",IF(AND({d}>={b},{d}<={c}),"accept","reject")))',
  agreement: "ABS({a}-{b})<=0.32*({a}+{b})/2",
  agreementLimit: "0.32*({a}+{b})/2",
  agreementLimitDensity: "1.85",
} as const;
