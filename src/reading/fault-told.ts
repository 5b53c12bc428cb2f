import { folded } from "../measure/folded";

/** How a remark tells of something that voids a test of this method, in the four languages. */
interface ToldFault {
  readonly told: RegExp;
  /** Words with which it is told of something else, or only thought of. */
  readonly not?: RegExp;
  /** Words anywhere in the remark with which it is no fault. */
  readonly notBeside?: RegExp;
  /** Told by a denial itself: "did not settle". */
  readonly byDenial?: true;
}

/** One of these words, each folded; those that end in ~ may go on. */
const words = (...lists: string[]) =>
  `\\b(?:${lists.join(" ").trim().split(/\s+/).join("|").replaceAll("~", "\\w*").replaceAll("_", " ")})\\b`;
const told = (...ways: string[]) => new RegExp(ways.join("|"));

const FOAM = words("foam foamy foaming espuma mousse ecume schaum");
const DIVISION = "(?:div|mark|line|grad|raya|lin|strich|teil)";
const OVER_TWO = "(?:[3-9]|\\d\\d)(?:[.,]\\d+)?";
const CONCRETE = words(
  "concrete sample material mortar bottom bowl base concreto hormigon muestra mortero fondo tazon recipiente",
  "beton echantillon fond cuve probe boden topf behalter",
);
const LEFT = words(
  "stuck packed caked undisturbed unmixed clumped adhered pegad~ adherid~ compactad~ sin_mezclar sin_deshacer",
  "colle~ tasse~ non_delaye~ festgesetzt fest_im fest_am restbeton betonrest~ klebt~ haftet~ nicht_gelost ungelost~",
);
const ALCOHOL = words("alcohol alcool alkohol ipa isopropyl~ isopropanol");
const TRUCK = "truck drum camion fahrmischer";

/** Words that belong together stand so close. */
const NEAR = ".{0,60}";

const MINUTES = "(?:m|min|mins|minutes?|minutos?|minuten)\\b";
const SETTLE = words(
  "settle settled settling reposo estabilizar~ asentarse asiento repos stabilis~ beruhig~ ruhe",
);

const FAULTS: readonly ToldFault[] = [
  {
    told: told(
      words(
        "leak leaks leaked leaking leakage leaky fuga fugas fugo fuite fuites fuit fuyait undicht~ leckt~ leckage",
      ),
    ),
    not: told(
      words(
        TRUCK,
        "mould moulds mold molds molde moldes moule moules hose tank chute pump form forms formwork hydraulic oil roof manguera tanque bomba aceite cimbra",
      ),
      words(
        "encofrado pompe huile coffrage schlauch pumpe schalung leak-free checked_for_leak checked_for_leaks",
      ),
      "\\bleak[- ](?:check|test)",
    ),
  },
  {
    told: told(
      `${words("too_much excess~ heavy lots_of lot_of persistent mucha demasiada excesiva trop_de beaucoup_de viel starker")}${NEAR}${FOAM}`,
      `${FOAM}${NEAR}${words("excess~ too_much too_high too_thick excesiva abondante stark")}`,
      `${FOAM}\\D{0,40}(?:over|above|>|more than|mas de|plus de|uber|mehr als) ?(?:2|two|dos|deux|zwei)\\b`,
      `${FOAM}\\D{0,40}${OVER_TWO} ?${DIVISION}`,
      `(?:^|\\D)${OVER_TWO} ?${DIVISION}\\w* ?(?:of|de|d')? ?${FOAM}`,
    ),
  },
  {
    told: told(
      `${FOAM}${NEAR}(?:n't|${words("not never no pas nicht")})${NEAR}${words("break~ broke clear~ dissipat~ disappear~ go gone rompi~ desaparec~ bajo disparai~ tomb~ verschw~ zerfall~")}`,
    ),
    byDenial: true,
  },
  {
    told: told(
      `${words("not isn't wasn't no nicht pas non")} ${words("watertight water-tight tight hermetic~ estanc~ dicht etanche~")}`,
      `${words("nicht no pas")} (?:${words("ganz was es queda quedo cierra cerro bien")} )*${words("tight hermetic~ estanc~ dicht etanche~")}`,
    ),
    not: told(
      words(
        TRUCK,
        "mould mold molde moule form schalung coffrage pump hose line chute manguera pompe schlauch",
      ),
    ),
    byDenial: true,
  },
  {
    told: told(
      `(?:[7-9]|[1-9]\\d)(?:[.,]\\d+)? ?${MINUTES}.{0,30}${SETTLE}`,
      `${SETTLE}.{0,30}\\b(?:[7-9]|[1-9]\\d)(?:[.,]\\d+)? ?${MINUTES}`,
    ),
    not: told(words(TRUCK, "wait~ esper~ attente slump")),
  },
  {
    told: told(
      words("unstable inestable instable instabil~"),
      `(?:n't|${words("not never no nunca")}) (?:${words("be become come fully really get se")} )?${words("settl~ stabili~ stable steady rest estabiliz~ estable")}`,
      `${words("still kept keep keeps continued continues")} (?:on )?(?:to )?(?:dropp?|mov|fall|ris|drift|creep|sink)`,
      "\\b(?:sigue|siguio) (?:bajando|moviendose)|\\bcontinua\\w* (?:a |de )?(?:bajando|baisser|descendre)",
      "\\bstabilis\\w+ pas\\b|\\b(?:pas|jamais) stab|\\bnicht stabil|\\bnicht zur ruhe|\\bberuhigt\\w* sich nicht",
      "\\b(?:fallt|sinkt|fiel|sank) (?:immer )?weiter",
    ),
    not: told(
      words(TRUCK, "scale balance ground weather slump pump soil temperature bascula waage"),
    ),
    byDenial: true,
  },
  {
    told: told(`${LEFT}${NEAR}${CONCRETE}`, `${CONCRETE}${NEAR}${LEFT}`, "\\bstill packed\\b"),
    not: told(words(TRUCK, "traffic chute trafico route hopper layers capas couches lagen")),
  },
  {
    told: told(
      `${ALCOHOL}${NEAR}${words("after later late afterwards despues luego apres danach nachtraglich nachgegeben spater")}`,
      `${words("add~ agreg~ anad~ ajout~ gab")}${NEAR}${words("more additional extra mas adicional davantage plus mehr")} (?:d'|de )?${ALCOHOL}`,
    ),
    not: told(words("use next usar usad~ utiliser prochain~ nachst~")),
    notBeside: told(words("repeat~ retest~ rerun repet~ repris~ wiederhol~")),
  },
  {
    told: told(
      words(
        "spill spills spilled spilt lost_water lost_some_water lost_liquid lost_alcohol water_lost liquid_lost water_was_lost",
      ),
      words(
        "se_derramo derramad~ derrame perdio_agua renverse~ deverse~ perte_d'eau perdu_de_l'eau",
      ),
      words("verschuttet wasser_verloren wasserverlust"),
    ),
    not: told(words(TRUCK, "oil diesel fuel concrete aceite huile gasoil ol")),
  },
];

/** A text that has none of these beginnings of a word tells of no such fault. */
const MAY_TELL =
  /tight|hermet|estanc|dicht|etanch|reposo|asent|repos|beruh|leak|fug|fuit|fuya|undicht|leck|foam|espuma|mousse|ecume|schaum|stab|settl|still|ke+p|contin|sig|steady|ruh|weiter|stuck|pack|cake|undist|unmix|clump|adher|pegad|compact|sin |colle|tass|delay|fest|betonr|restb|kleb|haft|gelost|alco|alko|ipa|isoprop|lost|spil|derram|perd|perte|renvers|devers|schutt|verl/;

const NONE = words(
  "no none not without never zero 0 nil n/a nein sin ningun~ nunca sans aucun~ pas jamais kein~ nicht ohne",
);
const WELL = words("ok okay good fine pass passed bien correct~ conforme bon in_ordnung gut");
/** A denial beside the fault: "no leaks", "sin fugas", "leak check passed". */
const DENIED = told(NONE, `${WELL}(?!.*${words("except but apart salvo excepto sauf ausser")})`);
/** "After zero" and "mise à zéro" tell when; there is no denial in it. */
const ZEROING =
  /\b((?:after|before|since|past|at|set|to|the|after the|before the|apres|avant|mise a|remise a|le|du|nach|vor|despues de|despues del) )(?:zero|0|null)\b/g;
/** Nor in a word for concrete that was left undisturbed. */
const UNMIXED =
  /\b(?:sin (?:mezclar|deshacer|remover|disgregar)|non delayee?s?|nicht gelost\w*)\b/g;
/** An answer behind a sign belongs to the word before it: "Leak: none", "foam - no". */
const ANSWER = new RegExp(`[:=(–—-]{1,3} ?(?=${NONE}|${WELL})`, "g");
const PARTS = /[,;:()\n]|\.(?=\s|$)|\s[-–—]\s|\b(?:but|pero|mais|aber)\b/;

/**
 * Whether a remark tells of something that voids a test by the method: a leak, too much foam, a level that
 * did not settle, concrete left undisturbed, alcohol added late or liquid lost ("leaked while rolling"). One
 * that denies it ("no leaks"), or tells it of something else ("truck leaking oil"), does not.
 */
export function faultTold(text: string): boolean {
  const written = folded(text.trim())
    .replace(/[’]/g, "'")
    .replace(/[^\S\n]+/g, " ");
  if (!MAY_TELL.test(written)) return false;
  return written
    .replace(ANSWER, " ")
    .replace(ZEROING, "$1zeroing")
    .replace(UNMIXED, "unmixed")
    .split(PARTS)
    .some((part) =>
      FAULTS.some(
        ({ told, not, notBeside, byDenial }) =>
          told.test(part) &&
          !not?.test(part) &&
          !notBeside?.test(written) &&
          (byDenial || !DENIED.test(part)),
      ),
    );
}
