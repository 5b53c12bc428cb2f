import type { FieldId } from "../../../src/reading/fields";
import type { CellValue } from "../../../src/measure/cell-value";

/** What a careful reader makes of one cell. */
export type Reads =
  | { readonly number: number }
  /** A calendar day as year-month-day. */
  | { readonly date: string }
  /** A time of day, hours and minutes of 24 hours. */
  | { readonly time: string }
  | { readonly amount: number; readonly unit: string }
  | { readonly moreThan: number }
  | { readonly lessThan: number }
  | { readonly low?: number; readonly high?: number }
  | { readonly yes: boolean }
  /** Whether the tester himself calls the test void. */
  | { readonly void: boolean }
  | { readonly sameAsAbove: true }
  /** It is not read; the ways in which it could be, empty where there is none. */
  | { readonly notRead: readonly string[] };

/** A cell as people type it. */
export interface ValueCase {
  readonly kind: FieldId | "specification" | "remark";
  readonly written: CellValue;
  readonly header?: string;
  /** Other cells of the column, where they decide. */
  readonly column?: readonly CellValue[];
  readonly reads: Reads;
}

type Written = readonly [written: CellValue, reads: Reads, column?: readonly CellValue[]];

/** Cells that stand under one header. */
function under(
  header: string | undefined,
  kind: ValueCase["kind"],
  cells: readonly Written[],
): ValueCase[] {
  return cells.map(([written, reads, column]) => ({
    kind,
    written,
    ...(header === undefined ? {} : { header }),
    ...(column === undefined ? {} : { column }),
    reads,
  }));
}

const day = (date: string): Reads => ({ date });
const clock = (time: string): Reads => ({ time });
const number = (value: number): Reads => ({ number: value });
const amount = (value: number, unit: string): Reads => ({ amount: value, unit });
const moreThan = (value: number): Reads => ({ moreThan: value });
const lessThan = (value: number): Reads => ({ lessThan: value });
const between = (low: number, high: number): Reads => ({ low, high });
const yes: Reads = { yes: true };
const no: Reads = { yes: false };
const isVoid: Reads = { void: true };
const notVoid: Reads = { void: false };
const same: Reads = { sameAsAbove: true };
const either = (...notRead: string[]): Reads => ({ notRead });

/** Dates. A year of two digits is of this century. */
const DATES: readonly ValueCase[] = [
  ...under("Date", "date", [
    ["2026-05-04", day("2026-05-04")],
    ["2026/05/04", day("2026-05-04")],
    ["May 4, 2026", day("2026-05-04")],
    ["4 May 2026", day("2026-05-04")],
    ["4-May-26", day("2026-05-04")],
    ["Mon 4 May 2026", day("2026-05-04")],
    ["Sept. 9, 2026", day("2026-09-09")],
    ["5/13/2026", day("2026-05-13")],
    ["5/13/26", day("2026-05-13")],
    ["13/05/2026", day("2026-05-13")],
    ["05/05/2026", day("2026-05-05")],
    ["05/04/2026", either("2026-05-04", "2026-04-05")],
    ["05/04/2026", day("2026-05-04"), ["05/13/2026", "05/14/2026"]],
    ["05/04/2026", day("2026-04-05"), ["13/05/2026", "14/05/2026"]],
    ["05/04/2026", either("2026-05-04", "2026-04-05"), ["13/05/2026", "05/13/2026"]],
    ["05/04/2026", either("2026-05-04", "2026-04-05"), ["05/06/2026", "05/07/2026"]],
    ["6/9", either("June 9 of a year not written", "6 September of a year not written")],
    ["May 2026", either()],
    ["31/02/2026", either()],
    ["13/13/2026", either()],
    ["tomorrow", either()],
  ]),
  ...under("Fecha", "date", [
    ["4 de mayo de 2026", day("2026-05-04")],
    ["4-may-2026", day("2026-05-04")],
    ["4 ene 2026", day("2026-01-04")],
    ["12 dic. 2026", day("2026-12-12")],
    ["1 de septiembre de 2026", day("2026-09-01")],
  ]),
  ...under("Date de l'essai", "date", [
    ["4 mai 2026", day("2026-05-04")],
    ["1er juin 2026", day("2026-06-01")],
    ["12 déc. 2026", day("2026-12-12")],
    ["3 févr. 2026", day("2026-02-03")],
    ["8 août 2026", day("2026-08-08")],
  ]),
  ...under("Datum", "date", [
    ["4. Mai 2026", day("2026-05-04")],
    ["04.05.2026", day("2026-05-04")],
    ["4.5.26", day("2026-05-04")],
    ["3. März 2026", day("2026-03-03")],
    ["12. Dez. 2026", day("2026-12-12")],
    ["9. Okt 2026", day("2026-10-09")],
  ]),
];

/** Times of day. */
const TIMES: readonly ValueCase[] = [
  ...under("Time of test", "time", [
    ["9:15", clock("09:15")],
    ["9:15 AM", clock("09:15")],
    ["9:15 a.m.", clock("09:15")],
    ["1:40 PM", clock("13:40")],
    ["1:40p", clock("13:40")],
    ["0915", clock("09:15")],
    ["0915 hrs", clock("09:15")],
    ["8 AM", clock("08:00")],
    ["1pm", clock("13:00")],
    ["12 a.m.", clock("00:00")],
    ["13 PM", either()],
    ["12:05 AM", clock("00:05")],
    ["12:05 PM", clock("12:05")],
    ["25:10", either()],
    ["morning", either()],
  ]),
  ...under("Hora de ensayo", "time", [
    ["9:15 h", clock("09:15")],
    ["1:20 p. m.", clock("13:20")],
  ]),
  ...under("Heure de l'essai", "time", [
    ["9h15", clock("09:15")],
    ["08 h 20", clock("08:20")],
    ["13 h", clock("13:00")],
  ]),
  ...under("Uhrzeit", "time", [
    ["08:20 Uhr", clock("08:20")],
    ["8.20 Uhr", clock("08:20")],
  ]),
];

/** Counts and amounts with their word, and none in words. */
const AMOUNTS: readonly ValueCase[] = [
  ...under("Cups", "cups", [
    ["2 cups", number(2)],
    ["2 cups of water", number(2)],
    ["two", number(2)],
    ["two cups", number(2)],
    ["1 cup", number(1)],
    ["none", number(0)],
    ["None", number(0)],
    ["nil", number(0)],
    ["zero", number(0)],
    ["no cups", number(0)],
    ["2 or 3", either("2", "3")],
    ["2-3", either("2", "3")],
    ["ok", either()],
    ["some", either()],
  ]),
  ...under("Vasos calibrados", "cups", [
    ["2 vasos", number(2)],
    ["ninguno", number(0)],
    ["dos", number(2)],
  ]),
  ...under("Gobelets", "cups", [
    ["2 gobelets", number(2)],
    ["aucun", number(0)],
    ["deux", number(2)],
  ]),
  ...under("Messbecher", "cups", [
    ["2 Becher", number(2)],
    ["keine", number(0)],
    ["zwei", number(2)],
  ]),
  ...under("Alcohol", "alcohol", [
    ["2 pt", amount(2, "pt")],
    ["2pt", amount(2, "pt")],
    ["2 pints", amount(2, "pt")],
    ["1 pint", amount(1, "pt")],
    ["1 1/2 pt", amount(1.5, "pt")],
    ["1½ pt", amount(1.5, "pt")],
    ["2.5 pts.", amount(2.5, "pt")],
    ["two pints", amount(2, "pt")],
    ["32 oz", amount(32, "fl oz")],
    ["32 fl. oz.", amount(32, "fl oz")],
    ["0.9 L", amount(0.9, "L")],
    ["900 mL", amount(900, "mL")],
    ["900ml", amount(900, "mL")],
    ["0,9 l", amount(0.9, "L")],
    ["none", amount(0, "")],
    ["no alcohol", amount(0, "")],
    ["2-3 pt", either("2 pt", "3 pt")],
    ["full bottle", either()],
    ["ok", either()],
  ]),
  ...under("Alcohol (L)", "alcohol", [
    [0.9, amount(0.9, "L")],
    ["0,9", amount(0.9, "L")],
    [1400, either("1400 L", "1400 mL")],
    ["900", either("900 L", "900 mL")],
    ["900 mL", amount(900, "mL")],
  ]),
  ...under("Alcohol (pintas)", "alcohol", [
    ["3 pintas", amount(3, "pt")],
    ["ninguno", amount(0, "")],
  ]),
  ...under("Alcool", "alcohol", [
    ["0,9 litre", amount(0.9, "L")],
    ["aucun", amount(0, "")],
  ]),
  ...under("Alkohol", "alcohol", [
    ["0,9 Liter", amount(0.9, "L")],
    ["kein", amount(0, "")],
  ]),
];

/** More and less, written with a sign or a word; six minutes and two divisions decide. */
const MORE_AND_LESS: readonly ValueCase[] = [
  ...under("Settling time (min)", "settle", [
    [">6", moreThan(6)],
    ["> 6 min", moreThan(6)],
    ["more than 6", moreThan(6)],
    ["over six", moreThan(6)],
    ["mehr als sechs Minuten", moreThan(6)],
    ["five min", number(5)],
    ["over 6 min", moreThan(6)],
    ["> 10", moreThan(10)],
    ["<1", lessThan(1)],
    ["< 1 min", lessThan(1)],
    ["less than 1", lessThan(1)],
    ["under 2 min", lessThan(2)],
    ["3 min", number(3)],
    ["2 min 30 s", number(2.5)],
    ["2 1/2", number(2.5)],
    ["6+", either("6", "more than 6")],
    ["≥6", either("6", "more than 6")],
    ["5-7", either("5", "7")],
    ["about 3", either()],
    ["long", either()],
  ]),
  ...under("Tiempo de estabilización (min)", "settle", [
    ["más de 6", moreThan(6)],
    ["menos de 1", lessThan(1)],
  ]),
  ...under("Temps de stabilisation (min)", "settle", [
    ["plus de 6", moreThan(6)],
    ["moins de 1", lessThan(1)],
  ]),
  ...under("Beruhigungszeit (min)", "settle", [
    ["mehr als 6", moreThan(6)],
    ["über 6", moreThan(6)],
    ["unter 1", lessThan(1)],
    ["weniger als 1", lessThan(1)],
  ]),
  ...under("Foam (div.)", "foam", [
    [">2", moreThan(2)],
    ["more than 2", moreThan(2)],
    ["over 2 div", moreThan(2)],
    ["more than 2 divisions", moreThan(2)],
    ["<1", lessThan(1)],
    ["less than 1 div.", lessThan(1)],
    ["1 div", number(1)],
    ["1/2", number(0.5)],
    ["none", number(0)],
    ["no foam", number(0)],
    ["2+", either("2", "more than 2")],
    ["≥2", either("2", "more than 2")],
    ["a little", either()],
  ]),
  ...under("Espuma (div.)", "foam", [
    ["más de 2", moreThan(2)],
    ["nada", number(0)],
  ]),
  ...under("Mousse (div.)", "foam", [
    ["plus de 2", moreThan(2)],
    ["aucune", number(0)],
  ]),
  ...under("Schaum (Teilstriche)", "foam", [
    ["mehr als 2", moreThan(2)],
    ["keiner", number(0)],
  ]),
];

/** A specification in one cell, for the air in per cent. */
const SPECIFICATIONS: readonly ValueCase[] = [
  ...under("Spec. air", "specification", [
    ["6 ± 1.5", between(4.5, 7.5)],
    ["6±1.5", between(4.5, 7.5)],
    ["6 +/- 1.5", between(4.5, 7.5)],
    ["6% ± 1.5%", between(4.5, 7.5)],
    ["6 ± 1½", between(4.5, 7.5)],
    ["6.0 +2/-1", between(5, 8)],
    ["6 +1.5 -1.5", between(4.5, 7.5)],
    ["6 (+2, -1)", between(5, 8)],
    ["4.5-7.5", between(4.5, 7.5)],
    ["(4.5-7.5)", between(4.5, 7.5)],
    ["[6 ± 1.5]", between(4.5, 7.5)],
    ["4.5 - 7.5 %", between(4.5, 7.5)],
    ["4.5–7.5", between(4.5, 7.5)],
    ["4.5 to 7.5", between(4.5, 7.5)],
    ["between 4.5 and 7.5", between(4.5, 7.5)],
    ["5-8", between(5, 8)],
    ["min 4", { low: 4 }],
    ["4 min.", { low: 4 }],
    ["≥ 4", { low: 4 }],
    [">= 4.5", { low: 4.5 }],
    ["at least 4", { low: 4 }],
    ["max 7.5", { high: 7.5 }],
    ["7.5 max.", { high: 7.5 }],
    ["≤ 7.5", { high: 7.5 }],
    ["<= 7.5", { high: 7.5 }],
    ["not over 7.5", { high: 7.5 }],
    ["min 4.5, max 7.5", between(4.5, 7.5)],
    ["6 1.5", either("6 ± 1.5", "1.5 to 6")],
    ["4.5, 7.5", either("4.5 to 7.5", "4.5 or 7.5")],
    ["per plans", either()],
    [46150, either()],
  ]),
  ...under("Aire especificado", "specification", [
    ["4.5 a 7.5", between(4.5, 7.5)],
    ["4,5 a 7,5", between(4.5, 7.5)],
    ["entre 4.5 y 7.5", between(4.5, 7.5)],
    ["mín. 4", { low: 4 }],
    ["máx. 7.5", { high: 7.5 }],
  ]),
  ...under("Air spécifié", "specification", [
    ["6 ± 1,5", between(4.5, 7.5)],
    ["4,5 à 7,5", between(4.5, 7.5)],
    ["de 5 à 8 %", between(5, 8)],
    ["min. 4", { low: 4 }],
  ]),
  ...under("Luftgehalt Soll", "specification", [
    ["6 ± 1,5", between(4.5, 7.5)],
    ["4,5 bis 7,5", between(4.5, 7.5)],
    ["mind. 4", { low: 4 }],
    ["höchstens 7,5", { high: 7.5 }],
    ["max. 7,5 %", { high: 7.5 }],
  ]),
];

/** The tester's own word on his test, and words that only look like it. */
const VOID_WORDS: readonly ValueCase[] = [
  ...under("Remarks", "remark", [
    ["VOID", isVoid],
    ["void - leak", isVoid],
    ["Void, foam", isVoid],
    ["test void, repeat", isVoid],
    ["voided", isVoid],
    ["discarded, foam", isVoid],
    ["test discarded", isVoid],
    ["invalid", isVoid],
    ["INVALID TEST", isVoid],
    ["not valid - packed", isVoid],
    ["not void", notVoid],
    ["valid", notVoid],
    ["avoid rain on sample", notVoid],
    ["surface voids patched", notVoid],
    ["light rain", notVoid],
    ["rejected", either("the test is rejected", "the load is rejected")],
    [
      "first of load discarded",
      either("the test is discarded", "the first of the concrete was discarded"),
    ],
    ["repeat if void", either("the test is void", "a rule for a void test")],
  ]),
  ...under("Status", "remark", [
    ["void", isVoid],
    ["V", either("void", "valid")],
    ["ok", notVoid],
    ["invalid", isVoid],
  ]),
  ...under("Air (%)", "air", [
    ["VOID", isVoid],
    ["void - leak", isVoid],
    ["6.25%", number(6.25)],
    ["6 1/4", number(6.25)],
    ["6,25", number(6.25)],
    ["5.75 / 6", either("5.75", "6")],
    ["5.5/5.5", either()],
    ["ok", either()],
  ]),
  ...under("Observaciones", "remark", [
    ["ensayo nulo", isVoid],
    ["anulado", isVoid],
    ["descartado por espuma", isVoid],
    ["no válido", isVoid],
  ]),
  ...under("Remarques", "remark", [
    ["essai nul", isVoid],
    ["annulé - fuite", isVoid],
    ["non valide", isVoid],
    ["essai rejeté", isVoid],
  ]),
  ...under("Bemerkung", "remark", [
    ["ungültig", isVoid],
    ["verworfen, Schaum", isVoid],
    ["Prüfung ungültig", isVoid],
    ["nicht ungültig", notVoid],
  ]),
];

/** Ditto marks stand for the cell above. */
const DITTO: readonly ValueCase[] = [
  ...under("Mix", "mix", [
    ['"', same, ["LW-45A"]],
    ["''", same, ["LW-45A"]],
    ["ditto", same, ["LW-45A"]],
    ["do.", same, ["LW-45A"]],
    ["〃", same, ["LW-45A"]],
    ["same", same, ["LW-45A"]],
    ["ditto", either(), []],
  ]),
  ...under("Alcohol (pt)", "alcohol", [
    ['"', same, [2]],
    ["ditto", same, [2]],
  ]),
  ...under("Mezcla", "mix", [["ídem", same, ["L-28"]]]),
  ...under("Formule", "mix", [["idem", same, ["BL-25"]]]),
  ...under("Sorte", "mix", [["dito", same, ["LC-25"]]]),
];

/** Yes, no and approval, each where it can mean one thing only. */
const APPROVAL: readonly ValueCase[] = [
  ...under("Leak?", "leak", [
    ["Y", yes],
    ["no", no],
    ["none", no],
    ["ok", no],
    ["tight", no],
    ["at the clamp", either()],
    ["✓", either("there was a leak", "looked for, and there was none")],
    ["x", either("there was a leak", "looked for, and there was none")],
  ]),
  ...under("Leak test", "leak", [
    ["pass", no],
    ["ok", no],
    ["fail", yes],
    ["yes", either("there was a leak", "the test for leaks was made")],
  ]),
  ...under("Meter tight?", "leak", [
    ["yes", no],
    ["no", yes],
    ["ok", no],
  ]),
  ...under("Packed?", "packed", [
    ["N", no],
    ["clean", no],
    ["ok", no],
    ["some", either()],
    ["✓", either("packed concrete was left", "looked for, and there was none")],
  ]),
  ...under("Bowl clean?", "packed", [
    ["yes", no],
    ["✓", no],
    ["no", yes],
  ]),
  ...under("¿Fuga?", "leak", [
    ["sí", yes],
    ["no", no],
    ["ninguna", no],
  ]),
  ...under("Fuite ?", "leak", [
    ["oui", yes],
    ["non", no],
    ["aucune", no],
  ]),
  ...under("Undicht?", "leak", [
    ["ja", yes],
    ["nein", no],
    ["i. O.", no],
    ["dicht", no],
  ]),
  ...under("Dicht?", "leak", [
    ["ja", no],
    ["nein", yes],
  ]),
];

/** Cells as people type them, with what they say. All are invented. */
export const VALUES: readonly ValueCase[] = [
  ...DATES,
  ...TIMES,
  ...AMOUNTS,
  ...MORE_AND_LESS,
  ...SPECIFICATIONS,
  ...VOID_WORDS,
  ...DITTO,
  ...APPROVAL,
];
