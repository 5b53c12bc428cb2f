import { headed } from "../header-case";
import type { SurroundedCase } from "./surrounded";

/** Tables with their titles, totals, means and signatures around them. Everything is invented. */
const ENGLISH: readonly SurroundedCase[] = [
  {
    above: [
      ["Lark Hollow Viaduct, Stage 2"],
      ["Fresh concrete tests, lightweight deck", null, null, null, "Week of May 18, 2026"],
      [],
    ],
    table: headed("weekly sheet with title and average", [
      ["Sample", "sample", "LH-1", "LH-2", "LH-3", "LH-4"],
      ["Del. ticket", "load", 5510, 5522, 5530, 5547],
      ["Slump, in", "slump", 4, 4.25, 3.75, 4.5],
      ["1st", "first", 6.25, 6, 5.75, 6.5],
      ["2nd", "second", 6.25, 6.25, 5.75, 6.5],
      ["Alc., pt", "alcohol", 2, 2, 1.5, 2],
      ["Cups", "cups", 0, 0, 0, 0],
      ["% air", "air", 6.25, 6.25, 5.75, 6.5],
      ["By", "none", "NK", "NK", "NK", "PO"],
    ]),
    below: [
      ["Average", null, 4.13, null, null, null, null, 6.19],
      ["Std. dev.", null, 0.32, null, null, null, null, 0.31],
      [],
      ["Submitted by:", null, null, null, "Date:"],
    ],
  },
  {
    above: [
      ["DAILY CONCRETE REPORT", null, null, null, null, "Sheet 1 of 1"],
      ["Job:", "Tanner St. garage", null, "Pour:", "Level 3 E", null],
      ["Supplier:", "Cobb Ready Mix", null, "Mix:", "LW-35"],
    ],
    table: headed("daily report with total yards", [
      ["Truck", "load", 18, 22, 31],
      ["Cu yd", "none", 9, 9, 7],
      ["Batched", "batched", "6:10", "6:40", "7:15"],
      ["Tested", "time", "6:55", "7:26", "8:04"],
      ["Slump", "slump", '5"', '4 3/4"', '5 1/2"'],
      ["Conc", "concreteTemperature", "68F", "69F", "70F"],
      ["Air", "airTemperature", "54F", "57F", "61F"],
      ["Vol. air", "air", "5.5%", "6%", "6.25%"],
      ["Cyls", "none", 4, null, 4],
    ]),
    below: [
      ["Total", 25, null, null, null, null, null, null, 8],
      ["* truck 31 waited 20 min at gate"],
      ["Foreman", null, null, "Inspector"],
    ],
  },
  {
    above: [["Volumetric meter comparison, round 2"], ["Meters VM-4 (north lab) and VM-9 (yard)"]],
    table: headed("comparison of two meters of a kind", [
      [["Batch", ""], "load", 1, 2, 3, 4],
      [["VM-4", "Reading 1"], "ask", 5.5, 6, 6.75, 7.25],
      [["", "Reading 2"], "ask", 5.5, 6.25, 6.75, 7.5],
      [["VM-9", "Reading 1"], "ask", 5.75, 6, 6.5, 7.25],
      [["", "Reading 2"], "ask", 5.75, 6, 6.5, 7.25],
      [["Alcohol both (oz)", ""], "alcohol", 16, 24, 32, 32],
      [["Difference", ""], "none", 0.25, 0.25, 0.25, 0.25],
    ]),
    below: [["Mean difference", null, null, null, null, null, 0.25]],
  },
];

const SPANISH: readonly SurroundedCase[] = [
  {
    above: [
      ["Control de concreto fresco"],
      ["Obra: Puente Los Sauces", null, null, "Tramo: 2", null, "Semana 21"],
      [],
    ],
    table: headed("semanal con promedio y firmas", [
      ["Muestra", "sample", "S-1", "S-2", "S-3"],
      ["Remisión", "load", 8801, 8809, 8815],
      ["Rev.", "slump", "12 cm", "13 cm", "12.5 cm"],
      ["Lect. 1", "first", 5.75, 6, 6.25],
      ["Lect. 2", "second", 5.75, 6.25, 6.25],
      ["Alcohol (oz)", "alcohol", 24, 24, 32],
      ["% de aire", "air", 5.75, 6.25, 6.25],
      ["Temp. mezcla", "concreteTemperature", 27, 28, 29],
    ]),
    below: [
      ["Promedio", null, null, null, null, null, 6.08, 28],
      [],
      ["Elaboró", null, null, "Autorizó"],
    ],
  },
];

const FRENCH: readonly SurroundedCase[] = [
  {
    above: [["Relevé des essais sur béton frais"], ["Chantier : Passerelle des Aulnes"], []],
    table: headed("relevé avec moyenne et signature", [
      ["Prélèvement", "sample", "PA-1", "PA-2", "PA-3"],
      ["Bon de livraison", "load", 3301, 3308, 3314],
      ["Lect. 1", "first", "6", "6,25", "5,75"],
      ["Lect. 2", "second", "6", "6,5", "5,75"],
      ["Lect. 3", "third", null, null, null],
      ["Alcool (l)", "alcohol", "0,7", "0,9", "0,7"],
      ["Température", "ask", 18, 19, 19],
      ["Teneur en air", "air", "6", "6,5", "5,75"],
      ["Opérateur", "none", "Vial", "Vial", "Vial"],
    ]),
    below: [
      ["Moyenne", null, null, null, null, null, "18,7", "6,1"],
      [],
      ["Le responsable :", null, null, "Date :"],
    ],
  },
];

const GERMAN: readonly SurroundedCase[] = [
  {
    above: [["Frischbetonprüfungen"], ["Baustelle: Talbrücke Erlengrund", null, null, "KW 21"], []],
    table: headed("Wochenblatt mit Mittelwert und Unterschrift", [
      ["Probe", "sample", "TE-1", "TE-2", "TE-3"],
      ["Lieferschein", "load", 9012, 9020, 9033],
      ["Abl. 1", "first", "5,5", "6", "6,25"],
      ["Abl. 2", "second", "5,75", "6", "6,25"],
      ["Alk. (ml)", "alcohol", 700, 700, 950],
      ["Becher", "cups", 0, 0, 0],
      ["Temp.", "ask", 18, 19, 19],
      ["Luftgehalt (%)", "air", "5,75", "6", "6,25"],
    ]),
    below: [
      ["Mittelwert", null, null, null, null, null, "18,7", "6,0"],
      [],
      ["Unterschrift:", null, null, "Datum:"],
    ],
  },
];

/** Whole sheets by language; the tables in them have their answers as every table has. */
export const WHOLE_SHEETS = { ENGLISH, SPANISH, FRENCH, GERMAN } as const;
