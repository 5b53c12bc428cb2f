import type { CellValue } from "../measure/cell-value";
import { folded } from "../measure/folded";

/** What changes the air and is told in words: alcohol, or cups of water that were counted. */
export type AmountField = "alcohol" | "cups";

const words = (list: string) => `(?:${list.trim().replace(/\s+/g, "|").replaceAll("_", " ")})`;

const ALCOHOL = words("alcohol alcool alkohol ipa isoprop\\w*");
const CUPS = words("cups? copas? tazas? vasos? godets? tasses? (?:mess)?becher");
const UNIT =
  words(`pts? pints? pintas? pintes? chopines? oz ounces? onzas? onces? ml cc l lts? lit(?:er|re|ro)s?
  qts? quarts? gal gallons? galon(?:es)?`);
const NUMBER = `(?:(?<![\\p{L}\\d][-–.,/]?)\\d[\\d.,/]{0,7}(?![\\d.,/]|\\s*%)|[½¼¾]|\\b${words(`half one two three four five six
  seven eight un una uno medio dos tres cuatro cinco seis deux trois quatre cinq demi ein eine einen zwei drei vier funf
  halber`)}\\b)`;
const NONE = "(?!0+(?:[.,]0+)?(?![\\d.,]))";
const AMOUNT = `${NUMBER}\\s*-?${UNIT}`;
/** Words that belong together stand so close. */
const NEAR = "[^.;\\n]{0,30}";
/** What is said of cups between them and their number, or behind them. */
const OF_CUPS = words("full extra more additional another added calibrated cal\\.? measured whole");
const BEHIND_CUPS = words(
  "of water added used needed of water_added water_added de_agua calibradas anadidas agregadas",
);

const TOLD: readonly (readonly [AmountField, RegExp])[] = [
  [
    "alcohol",
    new RegExp(`${AMOUNT}\\b${NEAR}\\b${ALCOHOL}\\b|\\b${ALCOHOL}\\b${NEAR}\\b${AMOUNT}\\b`, "u"),
  ],
  [
    "cups",
    new RegExp(
      `${NONE}${NUMBER}[\\s-]*(?:${OF_CUPS}\\s+){0,3}${CUPS}\\b(?!\\s*=\\s*\\d|\\s+(?:of|de)\\s+(?!water|agua|eau))` +
        `|\\b${CUPS}\\s*(?:${BEHIND_CUPS}\\s*){0,2}[:=]?\\s*${NONE}${NUMBER}(?!\\s*(?:%|=|ml|oz|cc)|\\s*\\p{L})`,
      "u",
    ),
  ],
];

/** What is on hand, in a kit or to be bought went into no test. */
const OF_NO_TEST = new RegExp(
  `\\b${words(`on_hand left_over in_stock to_buy to_order pick_up coffee en_existencia por_comprar bestellen
    kaffee cafe`)}\\b|${NUMBER}\\s*-?(?:${UNIT}\\s+)?${words(`jugs? bottles? botellas? bidons? bouteilles? flaschen?
    kanister`)}\\b`,
  "u",
);
const TOOL =
  /\b(?:funnel|syringe|strike-?off|tamping rod|mallet|trowel|wrench|scoop|embudo|jeringa|varilla|mazo|pala|entonnoir|seringue|tige|maillet|truelle|trichter|spritze|stab|hammer|kelle)\b/g;
/** Tells what to do, or what a cup is worth, where it stands beside no test. */
const INSTRUCTS =
  /\b(?:if|when|until|as needed|maximum|max|may|should|si|cuando|hasta que|maximo|wenn|falls|bis)\b(?! (?:not|no|nothing|otherwise|nicht|rien)\b)/;

/** A text without any of these tells of neither. */
const MAY_TELL = /alc|alk|ipa|isoprop|cup|cop|taza|vaso|godet|tasse|becher/i;

/**
 * What a text tells an amount of: "3 pt alcohol used", "two cups added". Never of what is on hand or in the kit.
 *
 * @param isOfATest Whether it stands beside a test: elsewhere "add 1 cup if the level is too low" instructs.
 */
export function amountsIn(cell: CellValue | undefined, isOfATest: boolean): readonly AmountField[] {
  if (typeof cell !== "string" || !MAY_TELL.test(cell)) return [];
  const parts = folded(cell)
    .replace(/[^\S\n]+/g, " ")
    .split(/[;\n]|\.\s/)
    .filter((part) => MAY_TELL.test(part) && !OF_NO_TEST.test(part))
    .filter((part) => isOfATest || !(INSTRUCTS.test(part) || (part.match(TOOL) ?? []).length > 1));
  return TOLD.flatMap(([field, told]) => (parts.some((part) => told.test(part)) ? [field] : []));
}
