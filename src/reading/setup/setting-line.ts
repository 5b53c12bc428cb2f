import type { Phrase } from "../../messages/sentence";
import { quoted, shownValue } from "../../measure/cell-value";
import { isIssue, issue, issuePhrase, type Issue } from "../../measure/issue";
import { numberFromCell, type DecimalMark } from "../../measure/number-from-cell";
import { FIELD_READERS } from "../field-readers";
import { FIELDS } from "../fields";
import { fieldNamed } from "./field-named";
import { named } from "./heading-words";
import type { Line } from "./line";
import { GIVEN_FIELDS, type GivenField } from "./mix-headings";

/** What a setting is of. */
export type SettingName = "scaleEnd" | "datesFrom" | GivenField;

/** A setting of the sheet as a whole. */
export interface SheetSetting {
  readonly is: SettingName;
  readonly value: unknown;
}

/** What settings are called that are no fields, in English, Spanish, French and German. */
const NAMES: readonly (readonly [SettingName, string])[] = [
  [
    "scaleEnd",
    `end of the scale, scale end; fin de la escala, final de la escala; fin de l'échelle;
     Ende der Skala, Skalenende`,
  ],
  [
    "datesFrom",
    `days counted from, date system; días contados desde, sistema de fechas;
     jours comptés depuis, calendrier; Tage gezählt ab, Datumssystem`,
  ],
  ["deliveryStandard", "edition; edición; édition; Ausgabe"],
  ["dischargeLimit", "time limit; límite de tiempo, tiempo límite; délai; Zeitgrenze"],
];

const BY_NAME = new Map(
  NAMES.flatMap(([setting, names]) =>
    names.split(/[,;]/).map((name) => [named(name), setting] as const),
  ),
);

/** The least end of a scale, and an end that no meter has (own choice). */
const SCALE = { least: 9, most: 20 };

/** Reads a line of the settings of the sheet; `undefined` where nothing is set. */
export function settingLine(
  { cells: { setting, value } }: Line<"setting" | "value">,
  line: number,
  decimal: DecimalMark,
): SheetSetting | Issue | undefined {
  const name = shownValue(setting).trim();
  if (name === "") return issue("setup-no-setting", { line });
  const known = BY_NAME.get(named(name)) ?? fieldNamed(name)?.field;
  const is = SETTINGS.find((each) => each === known);
  if (!is) return issue("setup-setting-unknown", { line, setting: quoted(name) });
  if (value === undefined) return undefined;
  const wrong = (why: Phrase) => issue("setup-value-unreadable", { line, heading: name, why });
  if (is === "scaleEnd" || is === "datesFrom") {
    const number = numberFromCell(value, decimal);
    if (isIssue(number)) return wrong(issuePhrase(number));
    if (is === "datesFrom")
      return number === 1900 || number === 1904
        ? { is, value: number }
        : issue("setup-no-date-system", { line, value: quoted(value) });
    return number !== undefined && number >= SCALE.least && number <= SCALE.most
      ? { is, value: number }
      : issue("setup-no-scale-end", { line, value: quoted(value), ...SCALE });
  }
  const read = FIELD_READERS[FIELDS[is].kind](value, { decimal });
  return isIssue(read) ? wrong(issuePhrase(read)) : { is, value: read };
}

const SETTINGS: readonly SettingName[] = ["scaleEnd", "datesFrom", ...GIVEN_FIELDS];
