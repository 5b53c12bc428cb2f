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
/** No specification asks for more air, nor for as little at most; less is a tolerance, a loss or a correction. */
const MOST_AIR = 15;
const LEAST_MOST_AIR = 2;

const NUMBER = "(\\d{1,2}(?:[.,]\\d{1,2}|\\s?[½¼¾]|\\s\\d\\/\\d)?)";
const PERCENT = "\\s*(%|percent|pct|prozent|por ciento|pour cent)?";
const TO = "(?:-|–|—|to|through|thru|a|à|bis|hasta)";
const AND = "(?:y|et|und|and)";
/** 5-8-26 is a day, and no number stands before it. */
const BEGIN = "(?<![\\d.,/-]|\\d[-–]\\s?)";
const END = "(?![\\d/]|[.,-]\\d)";
const pattern = (...parts: string[]) => new RegExp(BEGIN + parts.join("") + END, "g");

const LEAST = "(?:min\\w*|at least|least|or more|not less than|mindestens)\\.?";
const MOST = "(?:max\\w*|at most|most|or less|not over|not more than|hochstens)\\.?";
const BESIDE = `[\\s,;/]*(?:${AND} )?`;
const ABOUT = pattern(NUMBER, PERCENT, "\\s*(?:±|\\+\\s?\\/?\\s?[-−])\\s*", NUMBER, PERCENT);
const LEAST_AND_MOST = [
  pattern(NUMBER, PERCENT, `\\s*${LEAST}${BESIDE}`, NUMBER, PERCENT, `\\s*${MOST}`),
  new RegExp(
    `${LEAST}:?\\s*${NUMBER}${PERCENT}${BESIDE}${MOST}:?\\s*${NUMBER}${PERCENT}${END}`,
    "g",
  ),
  pattern(NUMBER, PERCENT, `\\s*${LEAST}${BESIDE}${MOST}:?\\s*`, NUMBER, PERCENT),
];
const RANGE = pattern(NUMBER, PERCENT, `\\s*${TO}\\s*`, NUMBER, PERCENT);
const BETWEEN = new RegExp(
  `\\b(?:between|entre|zwischen)\\s+${NUMBER}${PERCENT}\\s*${AND}\\s*${NUMBER}${PERCENT}${END}`,
  "g",
);

const AIR = "air|aire|luft\\w*|lp";
const ASKED =
  "spec\\w*|required|requirement|acceptable|acceptance|limits?|tolerance|target|especificad\\w*|especificacion|limites?|exige\\w*|vise\\w*|requis\\w*|anforderung\\w*|soll|vorgabe|grenz\\w*|allowed|permitid\\w*";
const OF_AIR = new RegExp(`\\b(?:${AIR})\\b`);
const ASKED_FOR = new RegExp(`\\b(?:${ASKED})\\b`);
/** Right before a range without a unit stands what asks for it. */
const ASKED_HERE = new RegExp(
  `(?:^|\\b(?:${AIR}|${ASKED}))(?:[\\s:=(]|\\b(?:content|contenido|gehalt|teneur|total|range|is|of|de|en|d|from|between|entre|von|to be|${AIR})\\b)*$`,
);
/** Right behind it nothing that it could count or measure. */
const ENDS_HERE = new RegExp(`^\\s*(?:$|[).,;:]|\\b(?:${AIR}|all)\\b)`);
const OF_ANOTHER =
  /\b(?:slump|temp\w*|density|unit weight|strength|psi|mpa|pcf|w\/c\w*|revenimiento|asentamiento|cono|densidad|affaissement|masse|densite|setzma\w*|rohdichte|ausbreit\w*|humidity|wind|date|time|hours?|yd|m3|cy|(?<=\d\s?)in|inch\w*|cm|mm|meter\w*|factor\w*|correction|loss|pump|alcohol|alcool|alkohol|readings?|rev|sections?|sect?|roll\w*|settl\w*)\b/;

/**
 * The air that a line above or below a table says is asked for: "Air 5 to 8 %, all loads", "Spec: 6 ± 1.5 %",
 * "4.5 min, 7.5 max". One that speaks of something else, or of several ranges of air, says nothing.
 */
export function limitsInLine(cell: CellValue | undefined): LimitsTold | undefined {
  if (typeof cell !== "string" || cell.length > LONGEST_LINE || !/\d/.test(cell)) return undefined;
  const line = folded(cell);
  const isAsked = ASKED_FOR.test(line);
  const told = clausesOnAir(line).flatMap((clause) => {
    const isPercent =
      OF_AIR.test(clause) && /%|percent|prozent|por ciento|pour cent|±/.test(clause);
    return isAsked || isPercent ? limitsIn(clause) : [];
  });
  const [first] = told;
  const isOne = told.every(({ low, high }) => low === first!.low && high === first!.high);
  return isOne ? first : undefined;
}

/**
 * The clauses of a line that are about the air, each with those behind it that name nothing: "air 5 min, 8 max". Where
 * no clause names anything, all of it may be; a clause that names two things is of neither.
 */
function clausesOnAir(line: string): string[] {
  const clauses = line.split(/[;|\n]|\s{3,}|\.\s+(?=[a-z])|,(?!\d)|(?<!\d),/);
  if (!clauses.some((clause) => OF_AIR.test(clause) || OF_ANOTHER.test(clause))) return [line];
  const onAir: string[] = [];
  let isOfAir = false;
  for (const clause of clauses) {
    const isOther = OF_ANOTHER.test(clause);
    if (OF_AIR.test(clause) && !isOther) onAir.push(clause);
    else if (isOfAir && !isOther) onAir.push(`${onAir.pop()!}, ${clause}`);
    isOfAir = !isOther && (isOfAir || OF_AIR.test(clause));
  }
  return onAir;
}

function limitsIn(clause: string): LimitsTold[] {
  const told: LimitsTold[] = [];
  let rest = clause;
  const take = (pattern: RegExp, limits: (one: number, two: number) => LimitsTold | undefined) => {
    for (const found of clause.matchAll(pattern)) {
      const [all, one, percent, two, percentToo] = found;
      const isTold = pattern !== RANGE || percent || percentToo || isAskedHere(clause, found);
      const asked = isTold && rest.includes(all) && limits(numberIn(one), numberIn(two));
      if (asked) told.push(asked);
      rest = rest.replace(all, " ");
    }
  };
  take(ABOUT, (target, tolerance) => between(target - tolerance, target + tolerance));
  for (const pattern of [...LEAST_AND_MOST, BETWEEN, RANGE]) take(pattern, between);
  return told;
}

function isAskedHere(clause: string, { index, 0: all }: RegExpMatchArray): boolean {
  const before = clause.slice(0, index);
  return ASKED_HERE.test(before) && ENDS_HERE.test(clause.slice(index! + all.length));
}

function numberIn(text: string | undefined): number {
  const number = numberFromText((text ?? "").replace(",", "."));
  return isIssue(number) ? NaN : number;
}

function between(low: number, high: number): LimitsTold | undefined {
  const isAir = low >= 0 && low < high && high <= MOST_AIR && high > LEAST_MOST_AIR;
  return isAir ? { low, high } : undefined;
}
