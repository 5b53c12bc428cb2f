import { folded } from "../../measure/folded";

/** What stands at the head of a report. */
export const HEADING_FIELDS = [
  "number",
  "project",
  "location",
  "date",
  "mix",
  "specification",
  "testers",
  "meter",
  "meterCheck",
] as const;
export type HeadingField = (typeof HEADING_FIELDS)[number];

/**
 * What people write before these things on a sheet, in the languages that headers are read in. Words of
 * the trade ("common practice"), folded: without accents and capitals.
 */
const WORDS: Readonly<Record<HeadingField, readonly string[]>> = {
  number: [
    ...["report no", "report number", "report #", "record no", "record number", "sheet no"],
    ...["reporte no", "no de reporte", "numero de reporte", "informe no", "rapport no"],
    ...["bericht nr", "protokoll nr", "berichtsnummer"],
  ],
  project: [
    ...["project", "project name", "project title", "job", "job name", "contract"],
    ...["proyecto", "nombre del proyecto", "obra", "contrato"],
    ...["projet", "chantier", "nom du projet", "projekt", "bauvorhaben", "baustelle"],
  ],
  location: [
    ...["location", "site", "placement", "place of placement", "location of placement", "element"],
    ...["structure", "placement location", "location in structure", "pour location"],
    ...["ubicacion", "lugar", "lugar de colocacion", "elemento", "estructura", "localizacion"],
    ...["lieu", "emplacement", "ouvrage", "ort", "bauteil", "einbauort"],
  ],
  date: ["date", "test date", "date of test", "fecha", "fecha de ensaye", "datum", "date d'essai"],
  mix: [
    "mix",
    "mix design",
    "mix id",
    "mix no",
    "mezcla",
    "diseno de mezcla",
    "melange",
    "rezeptur",
  ],
  specification: [
    ...["specification", "spec", "specified air", "project specification", "specification section"],
    ...["especificacion", "aire especificado", "exigence", "anforderung", "spezifikation"],
  ],
  testers: [
    ...["tester", "testers", "tested by", "technician", "technicians", "tech", "field technician"],
    ...["operator", "performed by", "inspector", "sampled and tested by"],
    ...["laboratorista", "tecnico", "ensayado por", "probado por", "realizo", "muestreo y ensayo"],
    ...["technicien", "essai par", "effectue par", "prufer", "gepruft von", "laborant"],
  ],
  meter: [
    ...["meter", "air meter", "meter no", "meter id", "meter number", "roller meter"],
    ...["medidor", "medidor no", "aerometre", "appareil", "gerat", "luftgehaltsprufer"],
  ],
  meterCheck: [
    ...[
      "meter checked",
      "meter check",
      "last check",
      "last calibration",
      "calibrated",
      "calibration",
    ],
    ...["meter calibrated", "calibration date", "verified", "last verification"],
    ...["ultima verificacion", "ultima calibracion", "calibrado", "fecha de calibracion"],
    ...["dernier etalonnage", "dernier controle", "letzte prufung", "kalibriert am"],
  ],
};

const FIELD_OF = new Map(
  HEADING_FIELDS.flatMap((field) => WORDS[field].map((words) => [words, field] as const)),
);

/** What a label or a header of a sheet names at the head of a report; `undefined` for none of it. */
export function headingFieldOf(label: string): HeadingField | undefined {
  const plain = folded(label).replace(/[.:]+/g, " ").replace(/\s+/g, " ").trim();
  return FIELD_OF.get(plain);
}
