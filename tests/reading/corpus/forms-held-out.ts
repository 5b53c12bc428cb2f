import { formCase, is, type FormCase, type FormCell } from "./form-case";

/** A form that is kept apart until the vocabulary is finished. */
function kept(
  name: string,
  sheets: Readonly<Record<string, readonly (readonly FormCell[])[]>>,
): FormCase {
  return formCase(name, sheets, true);
}

/** Forms kept apart, in four languages. All people, places and numbers are invented. */
export const FORMS_HELD_OUT: readonly FormCase[] = [
  kept("agency form with numbered lines", {
    Form: [
      ["Air Content of Lightweight Concrete, Volumetric"],
      ["1", "Date sampled", is("date", 46140)],
      ["2", "Delivery ticket", is("load", 90118)],
      ["3", "Mix number", is("mix", "4471")],
      ["4", "Water before alcohol, pt", is("water", 1)],
      ["5", "Alcohol added, pt", is("alcohol", 2.5)],
      ["6", "Meter reading after first rolling, %", is("first", 6.5)],
      ["7", "Meter reading after second rolling, %", is("second", 6.5)],
      ["8", "Cups of water added", is("cups", 0)],
      ["9", "Correction for alcohol, %", 0.15],
      ["10", "Air content, %", is("air", 6.25)],
      ["11", "Was concrete left packed in the bowl?", is("packed", "No")],
    ],
  }),
  kept("card with two bands of labels above values", {
    Sheet1: [
      ["Sample ID", "Roll 1", "Roll 2", "Alc. (oz)", "Foam", "Air"],
      [
        is("sample", "G1"),
        is("first", 5),
        is("second", 5),
        is("alcohol", 16),
        is("foam", 0),
        is("air", 5),
      ],
      [],
      ["Batched", "Sampled", "Tested", "Discharged", "Arrived"],
      [
        is("batched", "6:50"),
        is("sampledFrom", "7:31"),
        is("time", "7:36"),
        is("discharged", "7:55"),
        "7:24",
      ],
    ],
  }),
  kept("two forms a page, each in two columns", {
    Page: [
      ["Sample", is("sample", "1A", 0), "Truck", is("load", 17, 0)],
      ["Init.", is("first", 6, 0), "Check", is("second", 6.25, 0)],
      ["Alcohol, pt", is("alcohol", 2, 0), "Time to clear, min", is("settle", 3, 0)],
      ["Air, %", is("air", 6.25, 0), "Air temp, F", is("airTemperature", 61, 0)],
      ["", "", "", ""],
      ["Sample", is("sample", "1B", 1), "Truck", is("load", 22, 1)],
      ["Init.", is("first", 5.75, 1), "Check", is("second", 5.75, 1)],
      ["Alcohol, pt", is("alcohol", 2, 1), "Time to clear, min", is("settle", 2, 1)],
      ["Air, %", is("air", 5.75, 1), "Air temp, F", is("airTemperature", 66, 1)],
    ],
  }),
  kept("tests across, groups down the left", {
    Across: [
      ["Fresh concrete, day sheet"],
      ["Sample", "Ticket", is("load", "T-55", 0), is("load", "T-58", 1), is("load", "T-63", 2)],
      ["", "Time", is("time", 0.34375, 0), is("time", 0.395833333333333, 1), is("time", 0.5, 2)],
      ["Slump", "Measured, in", is("slump", 4, 0), is("slump", 4.5, 1), is("slump", 4.25, 2)],
      ["Air", "Reading 1", is("first", 6, 0), is("first", 6.25, 1), is("first", 6.75, 2)],
      ["", "Reading 2", is("second", 6, 0), is("second", 6.25, 1), is("second", 7, 2)],
      ["", "Alcohol, pt", is("alcohol", 2, 0), is("alcohol", 2, 1), is("alcohol", 3, 2)],
      ["", "Result", is("air", 6, 0), is("air", 6.25, 1), is("air", 6.75, 2)],
      ["Strength", "28 d, psi", 4410, 4530, 4390],
    ],
  }),
  kept("sheets named by ticket", {
    "Tkt 881204": [
      ["Meter rdg 1", is("first", 6.5)],
      ["Meter rdg 2", is("second", 6.5)],
      ["Alcohol (pints)", is("alcohol", 2)],
      ["Leaks", is("leak", "none")],
      ["Air", is("air", 6.5)],
    ],
    "Tkt 881209": [
      ["Meter rdg 1", is("first", 7)],
      ["Meter rdg 2", is("second", 7.5)],
      ["Meter rdg 3", is("third", 7.5)],
      ["Alcohol (pints)", is("alcohol", 3)],
      ["Leaks", is("leak", "none")],
      ["Air", is("air", 7.25)],
    ],
    "Tkt 881230": [
      ["Meter rdg 1", is("first", 5.5)],
      ["Meter rdg 2", is("second", 5.75)],
      ["Alcohol (pints)", is("alcohol", 2)],
      ["Leaks", is("leak", "lid")],
      ["Air", is("air", 5.75)],
    ],
  }),
  kept("form with a note beside the value", {
    A: [
      ["ROLLER METER", "", "notes"],
      ["Sample #", is("sample", "D-3"), "from chute"],
      ["1st reading", is("first", 8.25), "bottom of meniscus"],
      ["2nd reading", is("second", 8.5), ""],
      ["Alcohol added after zero", is("lateAlcohol", "no"), ""],
      ["Alcohol (L)", is("alcohol", 1.4), "70 %"],
      ["1% cups", is("cups", 2), "off the scale"],
      ["Bowl clean", is("packed", "yes"), ""],
    ],
  }),
  kept("label and value in one row, wide", {
    Strip: [
      [
        "Truck",
        is("load", 21),
        "R1",
        is("first", 5),
        "R2",
        is("second", 5.25),
        "Alc pt",
        is("alcohol", 1),
        "Air",
        is("air", 5.25),
      ],
    ],
  }),
  kept("form with limits in a box", {
    Test: [
      ["Test report", "", "", "Requirement", "Low", "High"],
      ["Sample", is("sample", "H2"), "", "Air, %", is("low", 4.5), is("high", 7.5)],
      [
        "Concrete temp., °F",
        is("concreteTemperature", 74),
        "",
        "Temp., °F",
        is("temperatureLow", 50),
        is("temperatureHigh", 90),
      ],
      ["Initial reading", is("first", 6.25)],
      ["Confirming reading", is("second", 6.25)],
      ["Alcohol, fl oz", is("alcohol", 32)],
      ["Air content, %", is("air", 6.25)],
    ],
  }),
  kept("Spanish record, labels above values", {
    Registro: [
      ["N° de muestra", "Guía", "Hora"],
      [is("sample", "H-12"), is("load", 55120), is("time", "10:20")],
      ["Asentamiento (mm)", "Temp. hormigón (°C)", "Temp. ambiente (°C)"],
      [is("slump", 120), is("concreteTemperature", 21), is("airTemperature", 15)],
      ["1ª lectura (%)", "2ª lectura (%)", "Alcohol (mL)"],
      [is("first", 5.75), is("second", 6), is("alcohol", 900)],
      ["Aire (%)", "Operador"],
      [is("air", 6), "S. Ojeda"],
    ],
  }),
  kept("Spanish sheet, two tests side by side", {
    Planilla: [
      ["ENSAYO 1", "", "ENSAYO 2", ""],
      ["Albarán", is("load", "A-301", 0), "Albarán", is("load", "A-306", 1)],
      ["Primera lectura", is("first", 6.5, 0), "Primera lectura", is("first", 7, 1)],
      ["Segunda lectura", is("second", 6.5, 0), "Segunda lectura", is("second", 7.25, 1)],
      ["Alcohol (l)", is("alcohol", 0.9, 0), "Alcohol (l)", is("alcohol", 1.4, 1)],
      ["Espuma (div.)", is("foam", 0, 0), "Espuma (div.)", is("foam", 2.5, 1)],
      ["Aire ocluido (%)", is("air", 6.5, 0), "Aire ocluido (%)", is("air", 7, 1)],
    ],
  }),
  kept("French sheet, tests as columns", {
    Relevé: [
      ["Essai n°", is("sample", 1, 0), is("sample", 2, 1), is("sample", 3, 2)],
      ["Camion", is("load", 14, 0), is("load", 9, 1), is("load", 14, 2)],
      ["Lecture initiale (%)", is("first", 6, 0), is("first", 6.5, 1), is("first", 5.5, 2)],
      ["Lecture de contrôle (%)", is("second", 6, 0), is("second", 6.5, 1), is("second", 5.75, 2)],
      ["Alcool (ml)", is("alcohol", 900, 0), is("alcohol", 900, 1), is("alcohol", 700, 2)],
      ["Fuite", is("leak", "non", 0), is("leak", "non", 1), is("leak", "oui", 2)],
      ["Air (%)", is("air", 6, 0), is("air", 6.5, 1), is("air", 5.75, 2)],
    ],
  }),
  kept("French form, one a sheet", {
    "Essai 1": [
      ["Échantillon :", is("sample", "É-4")],
      ["Chargement :", is("load", 3301)],
      ["Première lecture :", is("first", 5)],
      ["Deuxième lecture :", is("second", 5.25)],
      ["Volume d'alcool (L) :", is("alcohol", 0.7)],
      ["Béton resté collé au fond :", is("packed", "non")],
      ["Air :", is("air", 5.25)],
    ],
    "Essai 2": [
      ["Échantillon :", is("sample", "É-5")],
      ["Chargement :", is("load", 3308)],
      ["Première lecture :", is("first", 6)],
      ["Deuxième lecture :", is("second", 6)],
      ["Volume d'alcool (L) :", is("alcohol", 0.9)],
      ["Béton resté collé au fond :", is("packed", "oui")],
      ["Air :", is("air", 6)],
    ],
  }),
  kept("German record, two columns", {
    Protokoll: [
      ["Frischbetonprüfung", "", "", ""],
      ["Probe Nr.", is("sample", "F-8"), "Fahrzeug", "B-17"],
      ["Lieferschein", is("load", 70551), "Uhrzeit", is("time", "08:40")],
      ["Ablesung 1 (%)", is("first", 6), "Alkohol (l)", is("alcohol", 0.9)],
      ["Ablesung 2 (%)", is("second", 6.25), "Schaum (Teilstriche)", is("foam", 1)],
      ["Setzmaß (mm)", is("slump", 90), "Luftgehalt (%)", is("air", 6.25)],
    ],
  }),
  kept("German sheet, tests as columns", {
    Tag: [
      ["Prüfung", is("sample", "A", 0), is("sample", "B", 1)],
      ["Erstablesung", is("first", 7, 0), is("first", 5.5, 1)],
      ["Kontrollablesung", is("second", 7, 0), is("second", 5.5, 1)],
      ["Alkoholmenge in ml", is("alcohol", 1400, 0), is("alcohol", 700, 1)],
      ["Becher Wasser", is("cups", 0, 0), is("cups", 0, 1)],
      ["Beton im Topf verblieben", is("packed", "nein", 0), is("packed", "ja", 1)],
      ["Luftgehalt in %", is("air", 6.75, 0), is("air", 5.5, 1)],
    ],
  }),
];
