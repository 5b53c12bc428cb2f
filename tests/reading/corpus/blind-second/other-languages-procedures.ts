import { headed, type HeaderCase } from "../header-case";

/** What decides a test, among columns that look like it, in Spanish. */
export const SPANISH_PROCEDURES: readonly HeaderCase[] = [
  headed("registro del procedimiento", [
    ["Ensaye", "sample", "E1", "E2", "E3"],
    ["Agua previa al alcohol (ml)", "water", 500, 500, 500],
    ["Alcohol vertido (ml)", "alcohol", 500, 750, 1000],
    ["Alcohol extra con el nivel ya en cero", "lateAlcohol", "ninguno", "ninguno", "100 ml"],
    ["Volteo total (s)", "inversion", 45, 60, 50],
    ["Rodado (s)", "roll", 60, 60, 60],
    ["Nivel estable a los (min)", "settle", 4, 5, 6],
    ["Espuma en el cuello (% divisiones)", "foam", "0.5", 1, "2.5"],
    ["Goteo en el empaque", "leak", "no", "no", "sí"],
    ["Terrones en la base", "packed", "no", "no", "sí"],
    ["Nivel leído 1", "first", 6, 7, 8],
    ["Nivel leído 2", "second", 6, "6.75", 8],
    ["Copas medidoras vertidas", "cups", 0, 0, 2],
    ["Auditor", "none", "Neri", "Neri", "Neri"],
  ]),
  headed("correcciones aparte", [
    ["N° de vale", "load", "V-1", "V-2", "V-3"],
    ["Lectura del medidor (%)", "final", 7, 6.5, 9],
    ["Corrección por alcohol (%)", "none", 0, "0.25", "0.5"],
    ["Corrección por árido (%)", "aggregateFactor", "0.3", "0.3", "0.3"],
    ["Aire definitivo (%)", "air", "6.7", "5.95", "8.2"],
    ["Corrección de temperatura", "none", 0, 0, 0],
    ["Medidor serie", "meter", "RM-4", "RM-4", "RM-6"],
    ["Calibrado el", "meterCheck", "10/01/2025", "10/01/2025", "22/01/2025"],
    ["Humedad libre del agregado (L)", "freeMoisture", 120, 118, 131],
  ]),
];

/** The same in French. */
export const FRENCH_PROCEDURES: readonly HeaderCase[] = [
  headed("relevé de la procédure", [
    ["Réf. essai", "sample", "R-1", "R-2", "R-3"],
    ["Eau avant alcool (mL)", "water", 500, 500, 500],
    ["Alcool versé (mL)", "alcohol", 500, 700, 1000],
    ["Complément d'alcool après mise à zéro", "lateAlcohol", "aucun", "aucun", "100 mL"],
    ["Durée d'agitation (s)", "inversion", 45, 60, 50],
    ["Durée de roulage (s)", "roll", 60, 60, 60],
    ["Niveau stable après (min)", "settle", 4, 5, 6],
    ["Mousse au col (%)", "foam", "0,5", 1, "2,5"],
    ["Défaut d'étanchéité", "leak", "non", "non", "oui"],
    ["Fond propre après essai", "packed reversed", "oui", "oui", "non"],
    ["Niveau lu 1er roulage", "first", 6, 7, 8],
    ["Niveau lu 2e roulage", "second", 6, "6,8", 8],
    ["Doses d'eau versées (1 %)", "cups", 0, 0, 1],
    ["Opérateur", "none", "Lis", "Lis", "Ode"],
  ]),
  headed("corrections à part", [
    ["Bon n°", "load", "11", "12", "15"],
    ["Lecture de l'aéromètre (%)", "final", 7, "6,5", 9],
    ["Corr. alcool (%)", "none", 0, "0,25", "0,5"],
    ["Corr. granulats (%)", "aggregateFactor", "0,3", "0,3", "0,3"],
    ["Air retenu (%)", "air", "6,7", "5,95", "8,2"],
    ["Corr. température", "none", 0, 0, 0],
    ["Aéromètre", "meter", "AV-2", "AV-2", "AV-5"],
    ["Vérifié le", "meterCheck", "10/01/2025", "10/01/2025", "22/01/2025"],
    ["Humidité libre granulats (L)", "freeMoisture", 120, 118, 131],
  ]),
];

/** The same in German. */
export const GERMAN_PROCEDURES: readonly HeaderCase[] = [
  headed("Ablauf der Prüfung", [
    ["Versuch", "sample", "V-1", "V-2", "V-3"],
    ["Wasser vor Alkohol (ml)", "water", 500, 500, 500],
    ["Alkohol eingefüllt (ml)", "alcohol", 500, 700, 1000],
    ["Alkohol nach dem Nullen nachgefüllt", "lateAlcohol", "nein", "nein", "100 ml"],
    ["Wendezeit gesamt (s)", "inversion", 45, 60, 50],
    ["Rollzeit (s)", "roll", 60, 60, 60],
    ["Spiegel ruhig nach (min)", "settle", 4, 5, 6],
    ["Schaumkrone (%)", "foam", "0,5", 1, "2,5"],
    ["Leckage", "leak", "keine", "keine", "leicht"],
    ["Klumpen im Topfboden", "packed", "nein", "nein", "ja"],
    ["Ablesung nach 1. Rollen", "first", 6, 7, 8],
    ["Ablesung nach 2. Rollen", "second", 6, "6,8", 8],
    ["Eichbecher zugegeben", "cups", 0, 0, 1],
    ["Bediener", "none", "Uhl", "Uhl", "Ert"],
  ]),
  headed(
    "Korrekturen für sich",
    [
      ["Liefer-Nr.", "load", "11", "12", "15"],
      ["Anzeige am Gerät (%)", "final", 7, "6,5", 9],
      ["Alkoholkorrektur (%)", "none", 0, "0,25", "0,5"],
      ["Gesteinskörnungskorrektur (%)", "aggregateFactor", "0,3", "0,3", "0,3"],
      ["Luftgehalt endgültig (%)", "air", "6,7", "5,95", "8,2"],
      ["Temperaturkorrektur", "none", 0, 0, 0],
      ["Geräte-Nr.", "meter", "LR-2", "LR-2", "LR-5"],
      ["Geprüft am", "ask", "10.01.2025", "10.01.2025", "22.01.2025"],
      ["Eigenfeuchte Zuschlag (l)", "freeMoisture", 120, 118, 131],
    ],
    "Geprüft am may be the day of the test or of the meter's check.",
  ),
];
