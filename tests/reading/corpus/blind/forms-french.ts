import { is, type FormCase } from "../form-case";
import { blindForm } from "./blind-form";

/** Forms in French. All people, places and numbers are invented. */
export const FORMS_FRENCH: readonly FormCase[] = [
  blindForm("feuille d'essai, libellés à gauche", {
    Essai: [
      ["Essai d'air, méthode volumétrique"],
      ["Chantier :", "Quai des Tanneurs"],
      ["Date :", is("date", "9 juin 2026")],
      ["N° du bon :", is("load", 20417)],
      ["Formule :", is("mix", "BL-30")],
      ["Affaissement (mm) :", is("slump", 95)],
      ["Température du béton (°C) :", is("concreteTemperature", 19)],
      ["Température de l'air (°C) :", is("airTemperature", 13)],
      ["Première lecture (%) :", is("first", "6,25")],
      ["Deuxième lecture (%) :", is("second", "6,5")],
      ["Alcool versé (l) :", is("alcohol", "0,9")],
      ["Gobelets d'eau ajoutés :", is("cups", 0)],
      ["Teneur en air (%) :", is("air", "6,5")],
      ["Visa :", ""],
    ],
  }),
  blindForm("exigé et mesuré côte à côte", {
    Contrôle: [
      ["Contrôle à l'arrivée", null, null],
      ["Billet", is("load", 9931), null],
      ["Échantillon", is("sample", "CA-5"), null],
      ["", "Exigé", "Mesuré"],
      ["Affaissement (mm)", is("nominalSlump", 80), is("slump", 90)],
      ["Teneur en air (%)", is("target", "5 à 8"), is("air", 6.5)],
      ["Masse volumique (kg/m³)", is("densityTarget", 1850), is("density", 1866)],
      ["Inspecteur", "N. Rouard", null],
      ["Météo", "pluie faible", null],
    ],
  }),
  blindForm("essais en colonnes", {
    Tablier: [
      ["Tablier, travée 1", null, null, null],
      ["Date de coulée", is("date", 46169, 0, 1, 2), null, null],
      ["Éch.", is("sample", "T1", 0), is("sample", "T2", 1), is("sample", "T3", 2)],
      ["Camion", is("load", 6, 0), is("load", 14, 1), is("load", 6, 2)],
      ["Heure de l'essai", is("time", "8 h 10", 0), is("time", "9 h 05", 1), is("time", "10 h", 2)],
      ["Lecture 1", is("first", 7, 0), is("first", 6.5, 1), is("first", 6.75, 2)],
      ["Lecture 2", is("second", 7, 0), is("second", 6.75, 1), is("second", 6.75, 2)],
      ["Alcool (oz)", is("alcohol", 32, 0), is("alcohol", 32, 1), is("alcohol", 32, 2)],
      ["Mousse (div.)", is("foam", 1, 0), is("foam", 1, 1), is("foam", 0, 2)],
      ["Fuite", is("leak", "non", 0), is("leak", "non", 1), is("leak", "non", 2)],
      ["Air (%)", is("air", 7, 0), is("air", 6.75, 1), is("air", 6.75, 2)],
    ],
  }),
  blindForm("deux blocs de libellés", {
    Fiche: [
      ["Fiche de béton frais", null, null, null, null],
      ["Bon", is("load", "K-118"), null, "Lecture initiale (%)", is("first", 5.5)],
      [
        "Heure de gâchage",
        is("batched", "07:30"),
        null,
        "Lecture de contrôle (%)",
        is("second", 5.5),
      ],
      ["Heure de prélèvement", is("sampledFrom", "08:14"), null, "Alcool (ml)", is("alcohol", 700)],
      ["T° du béton", is("concreteTemperature", "18 °C"), null, "Tasses d'eau", is("cups", 0)],
      ["T° ambiante", is("airTemperature", "11 °C"), null, "Stabilisation (min)", is("settle", 3)],
      ["Éprouvettes", 6, null, "Air (%)", is("air", 5.5)],
    ],
  }),
];
