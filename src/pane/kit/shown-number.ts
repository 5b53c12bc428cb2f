import type { DecimalMark } from "../../measure/number-from-cell";

/** A percentage of air as it is reported, with two decimals: "7.50". */
export function shownPercent(value: number, decimal: DecimalMark): string {
  return withMark(value.toFixed(2), decimal);
}

/** A step of a calculation, with a third and fourth decimal where it needs them to add up: "7.525". */
export function shownStep(value: number, decimal: DecimalMark): string {
  return withMark(value.toFixed(4).replace(/0{1,2}$/, ""), decimal);
}

/** A change with its sign: "+0.25", "−0.225", "±0.00". */
export function shownChange(value: number, decimal: DecimalMark): string {
  const sign = value > 0 ? "+" : value < 0 ? "−" : "±";
  return sign + shownStep(Math.abs(value), decimal);
}

/** A standard deviation with three digits that count: "0.825", "0.28". */
export function shownDeviation(value: number, decimal: DecimalMark): string {
  return typedText(Number(value.toPrecision(3)), decimal);
}

/** A number as somebody would type it; "" for none. */
export function typedText(value: number | undefined, decimal: DecimalMark): string {
  return value === undefined ? "" : withMark(String(value), decimal);
}

/** A chance in whole percent; never 0 or 100, which would claim certainty. */
export function shownChance(chance: number): string {
  const percent = Math.round(chance * 100);
  if (percent < 1) return "< 1 %";
  return percent > 99 ? "> 99 %" : `${percent} %`;
}

function withMark(number: string, decimal: DecimalMark): string {
  return decimal === "," ? number.replace(".", ",") : number;
}
