import type { CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { isIssue } from "../measure/issue";
import { numberFromText } from "../measure/number-from-cell";

/** The least and the most air of a specification that is told in a line of text, %. */
export interface LimitsTold {
  readonly low: number;
  readonly high: number;
}

/** A longer text is no line of a sheet's head. */
const LONGEST_LINE = 300;
/** No specification asks for more air. */
const MOST_AIR = 15;

const NUMBER = "(\\d{1,2}(?:[.,]\\d{1,2}|\\s?[½¼¾]|\\s\\d\\/\\d)?)";
const PERCENT = "\\s*(?:%|percent|pct|prozent|por ciento|pour cent)?";
const TO = "(?:-|–|—|to|through|thru|a|à|y|et|und|and|bis|hasta)";
const RANGE = new RegExp(
  `(?:^|[^\\d.,/])${NUMBER}${PERCENT}\\s*${TO}\\s*${NUMBER}${PERCENT}(?![\\d/]|[.,]\\d)`,
);
const ABOUT = new RegExp(
  `(?:^|[^\\d.,/])${NUMBER}${PERCENT}\\s*(?:±|\\+\\s?\\/?\\s?[-−])\\s*${NUMBER}${PERCENT}(?![\\d/]|[.,]\\d)`,
);
const LEAST = "(?:min\\w*|at least|least|or more|not less than|mindestens)";
const MOST = "(?:max\\w*|at most|most|or less|not over|not more than|hochstens)";
const BOTH = [
  new RegExp(
    `${NUMBER}${PERCENT}\\s*${LEAST}\\.?[\\s,;/]*(?:and |y |et |und )?${NUMBER}${PERCENT}\\s*${MOST}`,
  ),
  new RegExp(
    `${LEAST}\\.?:?\\s*${NUMBER}${PERCENT}[\\s,;/]*(?:and |y |et |und )?${MOST}\\.?:?\\s*${NUMBER}${PERCENT}`,
  ),
  new RegExp(
    `${NUMBER}${PERCENT}\\s*${LEAST}\\.?[\\s,;/]*(?:and |y |et |und )?${MOST}\\.?:?\\s*${NUMBER}${PERCENT}`,
  ),
];

const OF_AIR = /\b(?:air|aire|luft\w*|lp)\b/;
const ASKED_FOR =
  /\b(?:spec\w*|required|requirement|acceptable|acceptance|limits?|tolerance|target|especificad\w*|especificacion|limites?|exige\w*|vise\w*|requis\w*|anforderung\w*|soll|vorgabe|grenz\w*|allowed|permitid\w*)\b/;
const OF_ANOTHER =
  /\b(?:slump|temp\w*|density|unit weight|strength|psi|mpa|pcf|w\/c\w*|revenimiento|asentamiento|cono|densidad|affaissement|masse|densite|setzma\w*|rohdichte|ausbreit\w*|humidity|wind|date|time|hours?|yd|m3|cy)\b/;

/**
 * The air that a line above or below a table says is asked for: "Air 5 to 8 %, all loads", "Spec: 6 ± 1.5 %",
 * "4.5 min, 7.5 max". One that speaks of something else, or of several ranges of air, says nothing.
 */
export function limitsInLine(cell: CellValue | undefined): LimitsTold | undefined {
  if (typeof cell !== "string" || cell.length > LONGEST_LINE || !/\d/.test(cell)) return undefined;
  const parts = folded(cell).split(/[;|\n]|\s{3,}|\.\s+(?=[a-z])/);
  const told = parts.flatMap((part) => {
    const isAsked = ASKED_FOR.test(part) && (OF_AIR.test(part) || !OF_ANOTHER.test(part));
    const isPercent = OF_AIR.test(part) && /%|percent|prozent|±/.test(part);
    if (!isAsked && !isPercent) return [];
    return limitsIn(part) ?? [];
  });
  return told.length === 1 ? told[0] : undefined;
}

function limitsIn(part: string): LimitsTold | undefined {
  const about = ABOUT.exec(part);
  if (about) {
    const [target, tolerance] = [numberIn(about[1]), numberIn(about[2])];
    return between(target - tolerance, target + tolerance);
  }
  for (const pattern of [...BOTH, RANGE]) {
    const found = pattern.exec(part);
    if (found) return between(numberIn(found[1]), numberIn(found[2]));
  }
  return undefined;
}

function numberIn(text: string | undefined): number {
  const number = numberFromText((text ?? "").replace(",", "."));
  return isIssue(number) ? NaN : number;
}

function between(low: number, high: number): LimitsTold | undefined {
  return low >= 0 && low < high && high <= MOST_AIR ? { low, high } : undefined;
}
