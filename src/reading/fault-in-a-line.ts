import { folded } from "../measure/folded";
import { faultTold } from "./fault-told";
import { saidOfTest } from "./testers-word";
import type { TestsNamed } from "./tests-named";

/** "V = void test" explains a mark, and is of no test. */
const EXPLAINS =
  /^\s*[*†("“]*\s*([\p{L}\p{S}✓✗×]{1,3}|\p{L}+ mark)["”)]*\s*=\s*\S|^\s*(?:legend|key|leyenda|clave|legende|zeichen\w*)\s*[:–-]/u;
/** "Note: V2 void, see foreman" begins with no word of the test. */
const BEGINS = /^\s*[\p{L}.]{2,12}\s*:/u;
/** Fewer words than these are no instruction. */
const FEWEST_WORDS = 4;

/** "All valid except V2" */
const ALL_BUT =
  /\b(?:valid\w*|ok|okay|good|fine|bien|bon\w*|gut|gultig|valable\w*)\b.*\b(?:except|but not|salvo|excepto|menos|sauf|ausser)\b/;

/** A clause with what parts it from the next. */
const CLAUSES = /[^,;:.()\n]+(?:[,;:()\n]+|\.(?=\s|$)|\.|$)/g;
/** Tells what is to be done, or what would be a fault. */
const INSTRUCTS = new RegExp(
  "\\b(?:if|when|whenever|unless|until|in case|should|shall|must|may|si|cuando|hasta que|en caso|debe\\w*|debera\\w*|wenn|falls|sobald|muss|mussen|soll|sollen|darf|doit|doivent|lorsque)\\b" +
    "|^\\W*(?:\\d+[.)]\\W*)?(?:check|inspect|make sure|verify|ensure|look for|avoid|watch for|repeat|discard|reject|revis\\w+|verifi\\w+|comprob\\w+|compruebe|evit\\w+|pruf\\w+|kontroll\\w+|auf|bei)\\b" +
    "|\\b(?:tests? with|any test|a test|ensayos? con|essais? avec|versuche? mit|prufung(?:en)? mit)\\b|\\?",
);

/**
 * The tests of which a line tells a fault or that they are void: those that it names, else whom it is told beside;
 * `undefined` where it tells of none, explains a mark or says what is to be done.
 *
 * @param unnamed The tests where it names none; whether it may be of others than those right beside it.
 */
export function testsToldOf(
  text: string,
  named: (text: string) => TestsNamed,
  unnamed: (isOpen: boolean) => (record: number) => boolean,
): ((record: number) => boolean) | undefined {
  if (EXPLAINS.test(folded(text))) return undefined;
  const { rows, isOpen, rest } = named(text);
  // A test that is called "Truck 4" leaves no truck in what is told of it.
  const isTold = tellsOfAFault(text) || tellsOfAFault(rest) || ALL_BUT.test(folded(text));
  // "V3 void?" and "void?" may be of the test; "repeat if it is void" is of none.
  const isShort = text.trim().split(/\s+/).length < FEWEST_WORDS;
  const mayBeTold =
    saidOfTest(text) &&
    isOfThisSheet(text) &&
    (rows.size > 0 || isShort || (isOpen && !instructs(text)));
  if (!isTold && !mayBeTold) return undefined;
  return rows.size > 0 ? (record) => rows.has(record) : unnamed(isOpen);
}

function isOfThisSheet(line: string): boolean {
  const written = folded(line);
  return !OF_ANOTHER.test(written) && !OF_ANOTHER_DAY.test(written);
}

const instructs = (line: string) => INSTRUCTS.test(folded(line));

/** Of the cylinders, the slump or the mould, which void no test of the air. */
const OF_ANOTHER =
  /\b(?:cylinder|beam|cube|probeta|cilindro|eprouvette|cylindre|wurfel|zylinder|probekorper|temperat|slump|affaissement|revenimiento|asentamiento|setzma)/;
/** Of tests that are not in this sheet. */
const OF_ANOTHER_DAY =
  /\b(?:last week|last month|yesterday|previous day|semana pasada|mes pasado|ayer|semaine derniere|hier|letzte woche|vorige woche|gestern)\b/;
const OF_AIR = /\b(?:air|aire|luft|leak|bowl|meter|tazon|medidor|topf)\w*\b/;

/** Whether a line that stands beside no test tells of a fault, or that a test is void. */
export function tellsOfAFault(line: string): boolean {
  const clauses = folded(line).match(CLAUSES) ?? [];
  const isOfTest = (clause: string) =>
    !INSTRUCTS.test(clause) &&
    !OF_ANOTHER_DAY.test(clause) &&
    (!OF_ANOTHER.test(clause) || OF_AIR.test(clause));
  const told = clauses.filter(isOfTest).join("");
  return [told, told.replace(BEGINS, "")].some(
    (each) => faultTold(each) || saidOfTest(each) === "void",
  );
}
