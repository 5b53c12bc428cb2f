import { folded } from "../measure/folded";

/** How a remark tells of something that voids a test of this method, in the four languages. */
interface ToldFault {
  readonly told: RegExp;
  /** What makes it one of something else, or a look that was taken. */
  readonly not?: RegExp;
}

const MATTER = String.raw`(?:concrete|concreto|hormigon|beton|sample|muestra|material|mortar|mortero|bottom|fondo|fond|boden|bowl|base|tazon|recipiente|cuve|topf|behalter|echantillon|probe)`;
const ALCOHOL = String.raw`(?:alcohol\w*|alcool|alkohol|ipa|isopropyl\w*|isopropanol)`;

const FAULTS: readonly ToldFault[] = [
  {
    told: /\b(?:leak(?:s|ed|ing|age|y)?|fugas?|fugo|fuites?|fuit|fuyait|undicht\w*|leckt\w*|leckage)\b/,
    not: /\b(?:truck|drum|hose|tank|chute|pump|forms?|formwork|hydraulic|oil|roof|camion|manguera|tanque|bomba|aceite|cimbra|encofrado|pompe|huile|coffrage|schlauch|fahrmischer|pumpe|schalung)\b|\bleak[- ](?:check|test|free)|\bcheck(?:ed)? for leaks?\b/,
  },
  {
    told: /\b(?:too much|excess\w*|heavy|lots? of|a lot of|persistent|mucha|demasiada|excesiva|trop de|beaucoup de|viel|starker|zu viel)\b.*\b(?:foam\w*|espuma|mousse|ecume|schaum)\b|\b(?:foam|espuma|mousse|ecume|schaum)\b.*\b(?:excess\w*|too (?:much|high|thick)|excesiva|excessive|abondante|stark)\b/,
  },
  {
    told: /\b(?:foam|espuma|mousse|ecume|schaum)\b[^\d]*(?:over|above|>|more than|mas de|plus de|uber|mehr als)\s*(?:2|two|dos|deux|zwei)\b|\b(?:foam|espuma|mousse|ecume|schaum)\b\D*(?:[3-9]|\d\d)(?:[.,]\d+)?\s*(?:div|mark|line|grad|raya|lin|strich|teil)|(?:^|\D)(?:[3-9]|\d\d)(?:[.,]\d+)?\s*(?:div|mark|line|grad|raya|lin|strich|teil)\w*\s*(?:of|de|d')?\s*(?:foam|espuma|mousse|ecume|schaum)\b/,
  },
  {
    told: /\b(?:unstable|inestable|instable|instabil|never (?:settled|stabili[sz]ed)|(?:did|does|would|could|was) ?n[o']t (?:settle\w*|stabili[sz]e|stable|steady|come to rest)|didn't (?:settle|stabili[sz]e)|not (?:settl\w+|stabili[sz]\w+|stable|steady)|still (?:dropping|moving|falling|rising)|no se estabiliz\w+|nunca se estabiliz\w+|sigue bajando|no estable|(?:ne )?se stabilis\w+ pas|pas stab\w+|jamais stab\w+|nicht stabil\w*|kam nicht zur ruhe|beruhigt\w* sich nicht)\b/,
    not: /\b(?:scale|balance|ground|weather|slump|pump|truck|soil|temperature|bascula|bilancia|waage)\b/,
  },
  {
    told: new RegExp(
      String.raw`\b(?:stuck|packed|caked|undisturbed|unmixed|clumped|adhered|pegad\w+|adherid\w+|compactad\w+|sin mezclar|sin deshacer|colle\w*|tasse\w*|non delaye\w*|festgesetzt|klebt\w*|haftet\w*|nicht gelost|ungelost\w*)\b.*\b${MATTER}\b|\b${MATTER}\b.*\b(?:stuck|packed|caked|undisturbed|unmixed|pegad\w+|adherid\w+|sin mezclar|sin deshacer|colle\w*|tasse\w*|non delaye\w*|festgesetzt|klebt\w*|haftet\w*|nicht gelost|ungelost\w*)\b`,
    ),
    not: /\b(?:truck|traffic|chute|drum|camion|trafico|route|hopper|in \d+ layers)\b/,
  },
  {
    told: new RegExp(
      String.raw`\b${ALCOHOL}\b.*\b(?:after|later?|afterwards?|despues|luego|apres|nach|danach|nachtraglich|nachgegeben|spater)\b|\b(?:more|additional|extra|mas|adicional|davantage|supplementaire|mehr|weiterer|zusatzlich\w*)\b ${ALCOHOL}\b`,
    ),
    not: /\b(?:use|next|usar|usad[oa]|usado|utiliser|prochain\w*|nachstes)\b/,
  },
  {
    told: /\b(?:lost (?:some )?(?:water|liquid|alcohol)|(?:water|liquid) (?:was )?lost|spill(?:ed|s|t)?|se derramo|derramad\w+|derrame|perdio agua|renverse\w*|deverse\w*|perdu de l'eau|perte d'eau|verschuttet|wasser verloren|wasserverlust)\b/,
    not: /\b(?:oil|diesel|fuel|truck|concrete|aceite|diesel|huile|gasoil|ol)\b/,
  },
];

/** A text that has none of these beginnings of a word tells of no such fault. */
const MAY_TELL =
  /leak|fug|fuit|fuya|undicht|leck|foam|espuma|mousse|ecume|schaum|stab|settl|dropping|moving|falling|rising|steady|ruh|bajando|rest|stuck|pack|cake|undist|unmix|clump|adher|pegad|compact|sin |colle|tass|delay|festg|kleb|haft|gelost|alco|alko|ipa|isoprop|lost|spill|derram|perd|renvers|devers|schutt|verl/;

const NONE = String.raw`(?:no|none|not|without|never|zero|0|nil|n/a|nein|sin|ningun\w*|nunca|sans|aucune?|pas|jamais|kein\w*|nicht|ohne)`;
const WELL = String.raw`(?:ok|okay|good|fine|pass(?:ed)?|bien|correct[oa]|conforme|bon|in ordnung|gut)`;
/** A denial beside the fault: "no leaks", "sin fugas", "leak check passed". */
const DENIED = new RegExp(
  String.raw`\b${NONE}\b|\b${WELL}\b(?!.*\b(?:except|but|apart|salvo|excepto|sauf|ausser)\b)`,
);
/** An answer behind a sign belongs to the word before: "Leak: none", "foam - no". */
const ANSWER = new RegExp(String.raw`\s*[:=(–—-]+\s*(?=(?:${NONE}|${WELL})\b)`, "g");
const SETTLING = FAULTS[3]!;
const PARTS = /[,;:()\n]|\.(?=\s|$)|\s[-–—]\s|\b(?:but|pero|mais|aber)\b/;

/**
 * Whether a remark tells of something that voids a test by the method: a leak, too much foam, a level that
 * did not settle, concrete left undisturbed, alcohol added late or water lost ("leaked while rolling"). One
 * that denies it ("no leaks"), or tells it of something else ("truck leaking oil"), does not.
 */
export function faultTold(text: string): boolean {
  const written = folded(text.trim()).replace(/[’]/g, "'");
  if (!MAY_TELL.test(written)) return false;
  return written
    .replace(ANSWER, " ")
    .split(PARTS)
    .some((part) =>
      FAULTS.some((fault) => {
        const found = fault.told.exec(part);
        if (!found || fault.not?.test(part)) return false;
        // What did not settle is told by a denial.
        return fault === SETTLING || !DENIED.test(part);
      }),
    );
}
