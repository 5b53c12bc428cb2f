import { is, type FormCase } from "../form-case";
import { blindForm } from "./blind-form";

/** Forms in German. All people, places and numbers are invented. */
export const FORMS_GERMAN: readonly FormCase[] = [
  blindForm("Prüfblatt mit Bezeichnungen links", {
    Prüfblatt: [
      ["Luftgehalt von Leichtbeton, Rollverfahren"],
      ["Baustelle:", "Brücke Tannbach"],
      ["Datum:", is("date", "08.06.2026")],
      ["Lieferschein-Nr.:", is("load", 51077)],
      ["Betonsorte:", is("mix", "LC 25")],
      ["Setzmaß (mm):", is("slump", 105)],
      ["Frischbetontemperatur (°C):", is("concreteTemperature", "18,5")],
      ["Lufttemperatur (°C):", is("airTemperature", "12,0")],
      ["Erste Ablesung (%):", is("first", "6,0")],
      ["Zweite Ablesung (%):", is("second", "6,25")],
      ["Alkohol (ml):", is("alcohol", 950)],
      ["Messbecher Wasser:", is("cups", 0)],
      ["Luftgehalt (%):", is("air", "6,25")],
      ["Prüfer:", "M. Ostheim"],
      ["Unterschrift:", ""],
    ],
  }),
  blindForm("Versuche als Spalten", {
    Überbau: [
      ["Überbau Feld 2", null, null, null],
      ["Probe", is("sample", "Ü1", 0), is("sample", "Ü2", 1), is("sample", "Ü3", 2)],
      ["Lieferschein", is("load", 801, 0), is("load", 806, 1), is("load", 812, 2)],
      ["Uhrzeit", is("time", "8.15 Uhr", 0), is("time", "9.00 Uhr", 1), is("time", "9.50 Uhr", 2)],
      ["Rohdichte (kg/m³)", is("density", 1866, 0), is("density", 1858, 1), is("density", 1871, 2)],
      ["Ablesung 1", is("first", "5,5", 0), is("first", "6", 1), is("first", "5,25", 2)],
      ["Ablesung 2", is("second", "5,5", 0), is("second", "6,25", 1), is("second", "5,5", 2)],
      ["Alkohol (l)", is("alcohol", "0,7", 0), is("alcohol", "0,9", 1), is("alcohol", "0,7", 2)],
      ["Luft (%)", is("air", "5,5", 0), is("air", "6,25", 1), is("air", "5,5", 2)],
      ["Würfel", 3, 3, 3],
    ],
  }),
  blindForm("Karte mit Überschriften über den Werten", {
    Karte: [
      ["Luftprüfung Nr. 31"],
      ["Probe", "Datum", "Fahrmischer", "Gerät"],
      [is("sample", "K31"), is("date", 46180), is("load", 12), is("meter", "RG-2")],
      [],
      ["1. Ablesung", "2. Ablesung", "3. Ablesung", "Alkohol (ml)"],
      [is("first", 7), is("second", 7.5), is("third", 7.5), is("alcohol", 950)],
      [],
      ["Schaum (Teilstriche)", "Beruhigung (min)", "Beton im Topf verblieben?", "Undicht?"],
      [is("foam", 1), is("settle", 4), is("packed", "nein"), is("leak", "nein")],
      [],
      ["Korrektur", "Luftgehalt"],
      [0, is("air", 7.5)],
    ],
  }),
  blindForm("zwei Blöcke untereinander", {
    Tagebuch: [
      ["Lieferschein:", is("load", 33001, 0), "Entnahme:", is("sampledFrom", "07:50", 0)],
      ["Setzmass (mm):", is("slump", 90, 0), "Luft (%):", is("air", "5,75", 0)],
      ["Erstablesung:", is("first", "5,75", 0), "Zweitablesung:", is("second", "5,75", 0)],
      ["Alkohol (ml):", is("alcohol", 700, 0), "Visum:", "rb"],
      [],
      ["Lieferschein:", is("load", 33012, 1), "Entnahme:", is("sampledFrom", "09:20", 1)],
      ["Setzmass (mm):", is("slump", 110, 1), "Luft (%):", is("air", "6,5", 1)],
      ["Erstablesung:", is("first", "6,25", 1), "Zweitablesung:", is("second", "6,5", 1)],
      ["Alkohol (ml):", is("alcohol", 950, 1), "Visum:", "rb"],
    ],
  }),
];
