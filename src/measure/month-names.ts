import { folded } from "./folded";

/** The months in English, Spanish, French and German, folded. */
const NAMES: readonly string[] = [
  "january enero janvier januar jaenner",
  "february febrero fevrier februar",
  "march marzo mars marz maerz",
  "april abril avril",
  "may mayo mai",
  "june junio juin juni",
  "july julio juillet juli",
  "august agosto aout",
  "september septiembre setiembre septembre",
  "october octubre octobre oktober",
  "november noviembre novembre",
  "december diciembre decembre dezember",
];
const MONTHS = NAMES.map((names) => names.split(" "));

/** The month, 0 to 11, that a name or its first three letters or more stand for in one of the languages. */
export function monthNamed(written: string): number | undefined {
  const start = folded(written);
  if (start.length < 3) return undefined;
  const fits = (names: readonly string[]) => names.some((name) => name.startsWith(start));
  const month = MONTHS.findIndex(fits);
  return month >= 0 && MONTHS.filter(fits).length === 1 ? month : undefined;
}

/** The English name of a month, 0 to 11. */
export function monthName(month: number): string {
  const name = MONTHS[month]![0]!;
  return name.charAt(0).toUpperCase() + name.slice(1);
}
