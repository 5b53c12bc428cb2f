import { isBlank, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";

/** Words that begin a row which sums up others, in the languages that are read; common practice. */
const SUMS_UP = new Set(
  `total, totals, grand total, sub total, subtotal, sum, average, averages, avg, ave, mean, min, minimum,
  max, maximum, count, range, std dev, std deviation, standard dev, standard deviation, stdev, median,
  number of tests, coefficient of variation, cov, lowest, highest,
  totales, suma, promedio, promedios, media, medias, minimo, maximo, cuenta, rango, desviacion,
  desviacion estandar, desv est, mediana, numero de ensayos,
  totaux, somme, moyenne, moyennes, moy, mini, maxi, nombre, etendue, ecart type, mediane, nombre d essais,
  summe, gesamt, mittelwert, mittel, durchschnitt, anzahl, spannweite, standardabweichung, kleinstwert,
  grosstwert, mw, anzahl der prufungen`
    .split(",")
    .map((words) => words.trim().replace(/\s+/g, " ")),
);

/** "Lot mean", "Sublot 14-1 average", "Total tests". */
const AS_SUM =
  /^total (?:tests|loads|cy|yards|m3|trucks|samples)$|\S (?:mean|average|avg|total|std dev|stdev|standard deviation|promedio|moyenne|ecart type|mittelwert|summe)$/;

/** Whether a row sums up the tests above it: it begins with a word such as "Average" or "Total". */
export function isSummaryRow(row: readonly CellValue[]): boolean {
  const first = row.find((cell) => !isBlank(cell));
  if (typeof first !== "string" || first.length > 60) return false;
  const words = folded(first)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
  const alone = words.replace(
    / (?:(?:of|de|des|der|d|del|du|von|for|sans|ohne|sin|without|except|this|today) .*|air|aire|luft|air content)$/,
    "",
  );
  return SUMS_UP.has(words) || SUMS_UP.has(alone) || AS_SUM.test(words);
}
