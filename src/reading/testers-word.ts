import { isBlank, quoted, shownValue, type CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";
import { isIssue } from "../measure/issue";
import { faultTold } from "./fault-told";
import type { FieldId } from "./fields";
import { yesOrNoFromCell } from "../measure/words-from-cell";

/** What somebody wrote of a test as a whole, and where. */
export interface TestersWord {
  /**
   * "void" where it can only mean that, "may be void" where it could be read otherwise too, "a fault"
   * where it tells of something that voids a test.
   */
  readonly says: "void" | "may be void" | "a fault";
  readonly written: string;
  /** Header of the column in which it stands. */
  readonly header: string;
  /** The field in whose place it stands, if any. */
  readonly field?: FieldId;
  /** Position of its column, where it stands in one that is no field. */
  readonly column?: number;
}

/** A text that has none of these beginnings of a word says nothing of a void test. */
const MAY_SAY =
  /void|valid|discard|reject|disregard|abort|abandon|thrown|not us|no good|bad test|vale|sirve|ne vaut|pas bon|taugt|\bnul|anul|annul|descart|rechaz|rejet|ecart|ungult|gult|verworf|verwirf|valab|verwert|nichtig/;
const VOID =
  /^(?:void(?:ed)?|invalid(?:ated)?|discarded|disregard(?:ed)?|aborted|nul[oa]s?|anulad[oa]s?|invalid[oa]s?|descartad[oa]s?|nuls?|nulles?|annulee?s?|invalides?|ungultige?|nichtig|verworfen)$/;
/** Words for a test that was refused, where they stand with the test; alone they may be of the load. */
const REFUSED =
  /^(?:rejected|thrown|abandoned|rechazad[oa]s?|rejetee?s?|ecarte(?:s|e|es|r)?|abgelehnt)$/;
const VALID = /^(?:valid|valid[oa]s?|valides?|valables?|gultige?|verwertbar)$/;
const NOT = /^(?:not|no|non|nicht|pas|never|isn|wasn|kein|keine|none|nie)$/;
/** Words that leave a sentence one about this test. */
const OF_THE_TEST =
  /^(?:a|an|un|una|une|ein|eine|test|tests|result|results|are|were|the|this|is|was|air|reading|as|declared|considered|called|marked|-|ensayos?|pruebas?|el|la|los|las|este|esta|resultado|es|son|fue|fueron|essais?|le|la|les|l|ce|cet|est|sont|resultat|prufung|versuch|test|die|der|diese|dieser|ist|war|messung|result:|to|be|be:)$/;
const A_TEST =
  /^(?:test|result|reading|ensayo|prueba|resultado|essai|resultat|prufung|versuch|messung)$/;
/** After these a word of a void test is a condition, a question or about what comes later. */
const CONDITION =
  /\b(?:if|when|unless|si|cuando|wenn|falls|sofern|(?:after|despues|apres|nach)(?! \d))\b|\?/;
const ONE_LETTER = /^v\.?$/;
const STATUS = /status|result|state|disposition|estado|resultado|statut|etat|resultat|ergebnis/;

/**
 * What a text says of the test that it stands beside: "void" for "VOID", "void - leak", "ensayo nulo",
 * "not valid - packed"; "may be void" for "rejected", which may be the load, and "repeat if void";
 * `undefined` for a text that says neither.
 *
 * @param header Header of its column: a "V" below "Status" may be void or valid.
 */
export function saidOfTest(text: string, header = ""): "void" | "may be void" | undefined {
  const written = folded(text.trim()).replace(/[’]/g, "'");
  if (ONE_LETTER.test(written)) return STATUS.test(folded(header)) ? "may be void" : undefined;
  if (!MAY_SAY.test(written)) return undefined;
  const parts = written.split(/[,;:.()/\n]|\s[-–—]\s|[–—]/).map((part) => part.trim());
  const said = parts.map(saidInPart).filter((each) => each !== undefined);
  if (said.length === 0) return undefined;
  if (said.every((each) => each === "not void")) return undefined;
  // "Void, see 110" begins with the word of this test and goes on about another.
  const isOfThis = VOID.test(parts[0]!) || !OF_ANOTHER.test(written);
  return said.includes("void") && !CONDITION.test(written) && isOfThis ? "void" : "may be void";
}

/** Words of another test than the one that they stand beside. */
const OF_ANOTHER =
  /\b(?:see|ver|voir|siehe|repeat of|retest of|replaces|previous|last test|first test|repeticion de|anterior|reprise de|precedent|wiederholung (?:von|der)|vorherige\w*|ersetzt)\b/;

/** What is void or invalid in another sense, where it follows the word. */
const IN_CONCRETE =
  /^(?:ratio|content|volume|volumes|space|spaces|formers?|tubes?|slabs?|decks?|blocks?|panels?|cores?|in|under|below)$/;
const ANOTHER_MATTER =
  /^(?:ticket|id|load|truck|batch|sample|concrete|cylinder|cylinders|number|signature|date|time|albaran|camion|muestra|hormigon|bon|echantillon|beton|lieferschein|probe|probekorper)$/;

const NO_GOOD =
  /\bdo not use\b|\bnot used\b|\bthrown out\b|\bno good\b|\bbad test\b|\bno (?:vale|sirve)\b|\bne vaut (?:rien|pas)\b|\bpas (?:bon|bonne)\b|\btaugt nicht\b/;

function saidInPart(part: string): "void" | "may be void" | "not void" | undefined {
  const words = part.split(/[\s!*"“”„'?¿¡_=#]+/).filter((word) => word !== "");
  const at = words.findIndex((word) => VOID.test(word) || REFUSED.test(word) || VALID.test(word));
  if (at < 0) return NO_GOOD.test(part) ? "may be void" : undefined;
  const word = words[at]!;
  const before = words.slice(0, at);
  const next = words[at + 1] ?? "";
  if (IN_CONCRETE.test(next)) return undefined;
  const denied = before.some((each) => NOT.test(each));
  if (VALID.test(word)) {
    if (!denied) return "not void";
  } else if (denied) return "not void";
  const others = before.filter((each) => !OF_THE_TEST.test(each) && !NOT.test(each));
  if (others.length > 0 || ANOTHER_MATTER.test(next)) return "may be void";
  if (REFUSED.test(word)) return before.some((each) => A_TEST.test(each)) ? "void" : "may be void";
  return "void";
}

const ASKS_VOID =
  /^(?:(?:is |the )*(?:test|ensayo|essai|prufung) )?(?:void(?:ed)?|invalid|discarded|nulo|anulado|nul|annule|ungultig)(?: test)?$/;
const ASKS_VALID =
  /^(?:(?:is |the )*(?:test|ensayo|essai|prufung) )?(?:valid|valido|valide|gultig)(?: test)?$/;

/**
 * What the cells of a column say of the tests beside them.
 *
 * @param header Header of the column: below "Void?" a yes says it, below "Valid?" a no.
 * @returns For a cell what it says, `undefined` where it says nothing of the test.
 */
export function testersWordIn(header: string): (cell: CellValue) => TestersWord | undefined {
  const asked = folded(header)
    .replace(/[([]?\b(?:y\s*\/?\s*n|yes\s*\/\s*no|s\s*\/\s*n|o\s*\/\s*n|j\s*\/\s*n)\b[)\]]?/g, "")
    .replace(/[?¿:]/g, "")
    .trim();
  const answer = ASKS_VOID.test(asked) ? true : ASKS_VALID.test(asked) ? false : undefined;
  return (cell) => {
    if (cell === null || isBlank(cell)) return undefined;
    if (answer !== undefined) {
      const yes = yesOrNoFromCell(cell);
      if (!isIssue(yes))
        return yes === answer ? { says: "void", written: quoted(cell), header } : undefined;
    }
    if (typeof cell !== "string") return undefined;
    const text = shownValue(cell);
    const says = saidOfTest(text, header) ?? (faultTold(text) ? "a fault" : undefined);
    return says && { says, written: quoted(cell), header };
  };
}
