import { headed, type HeaderCase } from "../header-case";

/** Headers as people and programs leave them, in Spanish. Everything in them is invented. */
export const SPANISH_AS_TYPED: readonly HeaderCase[] = [
  headed("sin acentos y en mayúsculas", [
    ["NUM. MUESTRA", "sample", "J-1", "J-2", "J-3"],
    ["NOTA DE REMISION", "load", 4410, 4417, 4425],
    ["FECHA COLADO", "date", "03/06/2026", "03/06/2026", "14/06/2026"],
    ["REV. PROY.", "nominalSlump", "14 cm", "14 cm", "14 cm"],
    ["REV. OBRA", "slump", "13 cm", "15 cm", "14 cm"],
    ["TEMP CONC", "concreteTemperature", 29, 30, 27],
    ["TEMP AMB", "airTemperature", 33, 34, 26],
    ["LECT 1A", "first", 5.5, 5.75, 6],
    ["LECT 2A", "second", 5.5, 6, 6],
    ["ALCOHOL ML", "alcohol", 700, 700, 700],
    ["AIRE %", "air", 5.5, 6, 6],
    ["CILINDROS", "none", 4, 4, 4],
    ["RESIDENTE", "none", "Ing. Peralta", "Ing. Peralta", "Ing. Peralta"],
  ]),
  headed("respuestas de un cuestionario", [
    ["¿Qué muestra es?", "sample", "C-9", "C-10", "C-11"],
    ["¿Cuánto alcohol agregó? (ml)", "alcohol", 700, 950, 950],
    ["Lectura después del primer rodado", "first", 6, 6.75, 7],
    ["Lectura después de rodar otra vez", "second", 6, 7, 7],
    ["¿Cuántas tazas de agua agregó?", "cups", 0, 0, 0],
    ["¿El recipiente quedó limpio de concreto?", "packed reversed", "Sí", "Sí", "Sí"],
    ["¿Hubo fuga?", "leak", "No", "No", "No"],
    ["Aire reportado (%)", "air", 6, 7, 7],
    ["Foto", "none", "a1.jpg", "a2.jpg", "a3.jpg"],
    ["Coordenadas", "none", "19.41,-99.10", "19.41,-99.10", "19.42,-99.10"],
  ]),
];

/** Headers as people and programs leave them, in French. Everything in them is invented. */
export const FRENCH_AS_TYPED: readonly HeaderCase[] = [
  headed("titres coupés sur plusieurs lignes", [
    ["N°\néch.", "sample", "D-1", "D-2", "D-3"],
    ["N° de\nbillet", "load", 71, 76, 82],
    ["Aff.\n(mm)", "slump", 85, 95, 90],
    ["Temp.\nbéton\n(°C)", "concreteTemperature", 18, 19, 19],
    ["Temp.\nair\n(°C)", "airTemperature", 9, 12, 14],
    ["M.V.\n(kg/m³)", "density", 1871, 1862, 1868],
    ["Air\nvol.\n(%)", "air", "6,0", "6,5", "6,25"],
    ["Nb de\ncyl.", "none", 3, 3, 3],
    ["Rés. 28 j\n(MPa)", "none", null, null, null],
    ["Init.\ntech.", "none", "RC", "RC", "AD"],
  ]),
  headed("réponses à un questionnaire", [
    ["Quel échantillon ?", "sample", "Q-3", "Q-4", "Q-5"],
    ["Date de l'essai", "date", "02/06/2026", "02/06/2026", "15/06/2026"],
    ["Combien d'alcool avez-vous versé (ml) ?", "alcohol", 700, 700, 950],
    ["Lecture après le premier roulage", "first", "5,75", "6", "6,5"],
    ["Lecture après le second roulage", "second", "6", "6", "6,5"],
    ["Combien de tasses d'eau ?", "cups", 0, 0, 0],
    ["Reste-t-il du béton collé dans le bol ?", "packed", "Non", "Non", "Non"],
    ["L'appareil est-il étanche ?", "leak reversed", "Oui", "Oui", "Oui"],
    ["Teneur en air retenue (%)", "air", "6", "6", "6,5"],
    ["Photo jointe", "none", "p1.jpg", "", "p3.jpg"],
  ]),
];

/** Headers as people and programs leave them, in German. Everything in them is invented. */
export const GERMAN_AS_TYPED: readonly HeaderCase[] = [
  headed("getrennt am Zeilenende", [
    ["Proben-\nNr.", "sample", 401, 402, 403],
    ["Liefer-\nschein", "load", 9901, 9907, 9915],
    ["Beton-\ntemp. (°C)", "concreteTemperature", "18", "18,5", "19"],
    ["Luft-\ntemp. (°C)", "airTemperature", "10", "13", "15,5"],
    ["Luft-\ngehalt (%)", "air", "5,5", "6,0", "5,75"],
    ["Roh-\ndichte (kg/m³)", "density", 1872, 1860, 1867],
    ["Aus-\nbreit-\nmaß (mm)", "none", 450, 470, 460],
    ["Ein-\nbauort", "none", "Achse 10", "Achse 10", "Achse 20"],
    ["Druckf.\n28 d", "none", null, null, null],
  ]),
  headed("Antworten aus einem Fragebogen", [
    ["Welche Probe?", "sample", "FB-1", "FB-2", "FB-3"],
    ["Wie viel Alkohol zugegeben? (ml)", "alcohol", 700, 950, 950],
    ["Ablesung nach dem ersten Rollen", "first", "5,75", "6,5", "6,25"],
    ["Ablesung nach erneutem Rollen", "second", "6", "6,5", "6,25"],
    ["Wie viele Becher Wasser zugegeben?", "cups", 0, 0, 0],
    ["Blieb Beton im Topf kleben?", "packed", "Nein", "Nein", "Nein"],
    ["Gerät dicht?", "leak reversed", "Ja", "Ja", "Ja"],
    ["Angegebener Luftgehalt (%)", "air", "6", "6,5", "6,25"],
    ["Foto", "none", "b1.jpg", "b2.jpg", ""],
    ["Standort GPS", "none", "48.2/11.4", "48.2/11.4", "48.2/11.4"],
  ]),
];
