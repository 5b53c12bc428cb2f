import { is, type FormCase } from "../form-case";
import { blindForm } from "./blind-form";

/** Forms in Spanish. All people, places and numbers are invented. */
export const FORMS_SPANISH: readonly FormCase[] = [
  blindForm("hoja de campo con rótulos a la izquierda", {
    Hoja1: [
      ["ENSAYE DE CONTENIDO DE AIRE, MÉTODO VOLUMÉTRICO"],
      ["Obra:", "Viaducto Las Jarillas"],
      ["Fecha:", is("date", "3 de junio de 2026")],
      ["Remisión No.:", is("load", 70511)],
      ["Mezcla:", is("mix", "CL-280")],
      ["Revenimiento (cm):", is("slump", 13)],
      ["Temperatura del concreto (°C):", is("concreteTemperature", 28)],
      ["Temperatura ambiente (°C):", is("airTemperature", 31)],
      ["Lectura inicial (%):", is("first", 6.5)],
      ["Segunda lectura (%):", is("second", 6.75)],
      ["Tercera lectura (%):", is("third", null)],
      ["Alcohol empleado (ml):", is("alcohol", 950)],
      ["Tazas calibradas de agua:", is("cups", 0)],
      ["Contenido de aire (%):", is("air", 6.75)],
      ["Laboratorista:", "B. Urrea"],
      ["Vo. Bo.:", ""],
    ],
  }),
  blindForm("dos columnas de rótulos en español", {
    Acta: [
      ["Acta de ensayos de hormigón fresco", null, null, null, null],
      ["Albarán", is("load", "H-3390"), null, "Hora de toma", is("sampledFrom", "10:12")],
      ["Matrícula", "0881-XX", null, "Hora de ensayo", is("time", "10:20")],
      ["Cono (cm)", is("slump", 8), null, "Lectura 1 (%)", is("first", "5,5")],
      [
        "Tª del hormigón (°C)",
        is("concreteTemperature", "19,5"),
        null,
        "Lectura 2 (%)",
        is("second", "5,75"),
      ],
      ["Tª del aire (°C)", is("airTemperature", "14,0"), null, "Alcohol (l)", is("alcohol", "0,7")],
      ["Densidad (kg/m³)", is("density", 1890), null, "Aire ocluido (%)", is("air", "5,75")],
      ["Probetas", 6, null, "Operario", "Tena"],
    ],
  }),
  blindForm("ensayos en columnas", {
    Losa: [
      ["Losa nivel 2", null, null, null],
      ["Muestra", is("sample", "L2-1", 0), is("sample", "L2-2", 1), is("sample", "L2-3", 2)],
      ["Guía", is("load", 5101, 0), is("load", 5108, 1), is("load", 5113, 2)],
      ["Asentamiento (cm)", is("slump", 10, 0), is("slump", 11, 1), is("slump", 10.5, 2)],
      ["1ª lectura (%)", is("first", 5, 0), is("first", 5.5, 1), is("first", 5.25, 2)],
      ["2ª lectura (%)", is("second", 5.25, 0), is("second", 5.5, 1), is("second", 5.25, 2)],
      ["Alcohol (ml)", is("alcohol", 500, 0), is("alcohol", 700, 1), is("alcohol", 700, 2)],
      ["Espuma (div.)", is("foam", 0, 0), is("foam", 1, 1), is("foam", 1, 2)],
      ["% de aire", is("air", 5.25, 0), is("air", 5.5, 1), is("air", 5.25, 2)],
      ["Resistencia 28 d", null, null, null],
    ],
  }),
  blindForm("rótulos encima de los valores", {
    Ficha: [
      ["Ficha de aire"],
      ["Muestra", "Fecha", "Camión", "Hora"],
      [is("sample", "F-08"), is("date", 46176), is("load", 27), is("time", "11:35")],
      [],
      ["Lectura 1", "Lectura 2", "Alcohol (pintas)", "Vasos de agua"],
      [is("first", 8.5), is("second", 8.5), is("alcohol", 3), is("cups", 1)],
      [],
      ["Minutos en estabilizar", "¿Concreto pegado?", "¿Fuga?", "Aire (%)"],
      [is("settle", 5), is("packed", "no"), is("leak", "no"), is("air", 9.25)],
    ],
  }),
];
