import type { CellValue } from "../../src/measure/cell-value";
import { issueSentence } from "../../src/measure/issue";
import { FIELDS, nameInSetup } from "../../src/reading/fields";
import { readSetup } from "../../src/reading/setup/setup";

type Cells = readonly (readonly CellValue[])[];

const COLUMNS = ["Header", "Taken for", "Unit"];
const SETTINGS = ["Setting", "Value"];
const MIXES = ["Mix", "Target", "Tolerance", "Low", "High", "Source"];

test("both parts are read, with titles and blank lines between them (the format as documented)", () => {
  const setup = readSetup([
    ["Fresh setup", null, null],
    COLUMNS,
    ["R 1", "first reading", null],
    ["Spirit", "Alcohol", "oz"],
    ["Remark 2", "Not  ours", null],
    [null, null, null],
    ["Specifications", null, null],
    MIXES,
    ["LW-4", 6, 1.5, null, null, "drawing S-1"],
    ["LW-5", null, null, 4, 7],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.columns).toEqual([
    { header: "R 1", field: "first" },
    { header: "Spirit", field: "alcohol", unit: "oz" },
    { header: "Remark 2", field: "not ours" },
  ]);
  expect(setup.specificationFor("lw-4 ")).toMatchObject({ air: { low: 4.5, high: 7.5 } });
  expect(setup.specificationFor("LW-5")).toMatchObject({ air: { low: 4, high: 7 } });
  expect(setup.specificationFor("LW-6")).toBeUndefined();
});

test("the parts may stand beside each other", () => {
  const setup = readSetup([
    ["Header", "Taken for", null, "Mix", "Target"],
    ["R 1", "first", null, "A", "6 ± 1.5"],
    [null, null, null, 101, "min 4"],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.columns).toEqual([{ header: "R 1", field: "first" }]);
  expect(setup.specificationFor("A")).toMatchObject({ air: { low: 4.5, high: 7.5 } });
  expect(setup.specificationFor("101")).toEqual({ mix: "101", air: { low: 4 }, values: {} });
});

test("every field can be named by its label, and no two fields by the same", () => {
  const ids = Object.keys(FIELDS) as (keyof typeof FIELDS)[];
  const lines = ids.map((id, i) => [`column ${i}`, nameInSetup(id)]);
  expect(readSetup([COLUMNS, ...lines]).columns.map(({ field }) => field)).toEqual(ids);
});

test.each<[what: string, cells: Cells, said: RegExp]>([
  ["no headings", [["R 1", "first"]], /^Nothing of the setup was applied/],
  ["above the headings", [["R 1", "first"], COLUMNS], /^Setup, line 1: it stands above/],
  ["a column of our own", [["Header", "Taken for", "Who"]], /with the column “Who”/],
  ["no header", [COLUMNS, [null, "first"]], /line 2: it names no header/],
  ["nothing taken for", [COLUMNS, ["R 1", null]], /what “R 1” is taken for/],
  ["no field", [COLUMNS, ["R 1", "fist"]], /“fist”.*is no field/],
  ["no unit", [COLUMNS, ["R 1", "alcohol", "thimbles"]], /“thimbles” is no unit/],
  ["a unit of other things", [COLUMNS, ["R 1", "alcohol", "°F"]], /alcohol is not given in °F/],
  ["a unit where none is", [COLUMNS, ["R 1", "sample", "oz"]], /sample is not given in oz/],
  ["a header twice", [COLUMNS, ["A", "first"], ["a", "second"]], /line 3: line 2 says something/],
  ["no mix", [MIXES, [null, 6, 1.5]], /line 2: it names no mix/],
  ["a target alone", [MIXES, ["A", 6]], /line 2, Target: 6 alone is no limit/],
  ["a tolerance alone", [MIXES, ["A", null, 1]], /line 2, Tolerance: it is not said around what/],
  [
    "units that differ",
    [
      ["Mix", "Slump low (in)", "Slump high (mm)"],
      ["A", 3, 100],
    ],
    /line 2, Slump high \(mm\): one limit is in in and the other in mm/,
  ],
  [
    "no such size",
    [
      ["Mix", "Aggregate size"],
      ["A", "fine"],
    ],
    /line 2, Aggregate size: .*“fine”/,
  ],
  ["a setting unknown", [SETTINGS, ["weather", "fair"]], /“weather” is no setting/],
  ["a value alone", [SETTINGS, [null, 9]], /line 2: it names no setting/],
  ["no scale", [SETTINGS, ["End of the scale", 90]], /no scale of a meter ends at “90”/],
  ["a scale too short", [SETTINGS, ["End of the scale", 5]], /ends at “5”.*from 9 to 20/],
  ["no number", [SETTINGS, ["End of the scale", "long"]], /End of the scale: .*“long”/],
  ["no date system", [SETTINGS, ["Days counted from", 1905]], /Write 1900 or 1904/],
  [
    "a setting twice",
    [SETTINGS, ["scale end", 9], ["end of the scale", 10]],
    /line 3: line 2 sets/,
  ],
  [
    "unreadable",
    [MIXES, ["A", null, null, "four"]],
    /line 2, Low: the line was not applied\. “four”/,
  ],
  ["an error", [MIXES, ["A", null, null, { error: "#N/A" }]], /line 2, Low: .*#N\/A/],
  [
    "crossed",
    [MIXES, ["A", null, null, 8, 4]],
    /Low: the low limit, 8, lies above the high one, 4/,
  ],
  ["a mix twice", [MIXES, ["A", 6, 1], ["A ", 6, 2]], /line 3: line 2 says something else of mix/],
])("%s is said, and nothing of the line is applied", (_, cells, said) => {
  const { issues, columns, limitsAir, fields, scaleEnd } = readSetup(cells);
  expect(issues.map((issue) => issueSentence(issue))).toEqual([expect.stringMatching(said)]);
  expect(columns).toEqual([]);
  expect([limitsAir, [...fields], scaleEnd]).toEqual([false, [], undefined]);
});

test("everything that is specified for a mix, in its units (the format as documented)", () => {
  const { issues, specificationFor } = readSetup([
    [
      "Mix",
      "Low",
      "High",
      "Aggregate",
      "Aggregate size",
      "Exposure",
      "Density low (lb/ft³)",
      "Density high (lb/ft³)",
      "Slump target (in)",
      "Slump tolerance (in)",
      "Temperature low (°F)",
      "Temperature high (°F)",
      "Time allowed for discharge (min)",
      "Source",
    ],
    ["LW-4", 4.5, 7.5, "expanded shale", "3/4 in", "F2", 113, 119, 4, 1, 50, 90, 75, "S-1"],
  ]);
  expect(issues).toEqual([]);
  expect(specificationFor("LW-4")).toEqual({
    mix: "LW-4",
    air: { low: 4.5, high: 7.5 },
    densityUnit: "lb/ft³",
    values: {
      aggregate: "expanded shale",
      aggregateSize: { size: 0.75, unit: "in" },
      densityLow: 113,
      densityHigh: 119,
      slumpLow: { value: 3, unit: "in" },
      slumpHigh: { value: 5, unit: "in" },
      temperatureLow: { value: 50, unit: "°F" },
      temperatureHigh: { value: 90, unit: "°F" },
      dischargeLimit: 75,
    },
  });
});

test.each<[cells: readonly CellValue[], values: object]>([
  [
    ["115 ± 3 lb/ft³", "3 to 5 in", "max 32 °C"],
    {
      densityLow: 112,
      densityHigh: 118,
      slumpLow: { value: 3, unit: "in" },
      slumpHigh: { value: 5, unit: "in" },
      temperatureHigh: { value: 32, unit: "°C" },
    },
  ],
  [
    [1840, 100, "10-30"],
    {
      densityTarget: 1840,
      nominalSlump: { value: 100 },
      temperatureLow: { value: 10 },
      temperatureHigh: { value: 30 },
    },
  ],
])("limits may stand in one cell, %j", ([density, slump, temperature], values) => {
  const cells = [
    ["Mix", "Density", "Slump", "Concrete temperature"],
    ["A", density!, slump!, temperature!],
  ];
  const { issues, specificationFor } = readSetup(cells);
  expect(issues).toEqual([]);
  expect(specificationFor("A")!.values).toEqual(values);
});

test.each([
  ["Low", 0.045],
  ["Low", "0.045"],
  ["Target", "0.06 ± 0.015"],
])("a limit of air in a cell with a percentage format is refused: %s, %j", (heading, cell) => {
  const { issues } = readSetup([
    ["Mix", heading],
    ["LW-4", cell],
  ]);
  expect(issues.map((each) => issueSentence(each))).toEqual([
    expect.stringContaining("percentage format"),
  ]);
});

test.each<[language: string, headings: string[]]>([
  [
    "English",
    [
      "Mix",
      "Target air",
      "Tolerance",
      "Nominal maximum size",
      "Min. density",
      "Max slump",
      "Temp. min",
    ],
  ],
  [
    "Spanish",
    [
      "Mezcla",
      "Aire especificado",
      "Tolerancia",
      "Tamaño máximo del agregado",
      "Densidad mínima",
      "Revenimiento máximo",
      "Temperatura mínima",
    ],
  ],
  [
    "French",
    [
      "Mélange",
      "Air visé",
      "Tolérance",
      "Grosseur maximale",
      "Masse volumique minimale",
      "Affaissement maximal",
      "Température minimale",
    ],
  ],
  [
    "German",
    [
      "Betonsorte",
      "Soll-Luftgehalt",
      "Toleranz",
      "Größtkorn",
      "Rohdichte min",
      "Setzmaß max",
      "Temperatur min",
    ],
  ],
])("specifications are headed in %s (trade words)", (_, headings) => {
  const { issues, specificationFor } = readSetup([
    headings,
    ["A", 6, 1.5, "19 mm", 1840, "100 mm", "10 °C"],
  ]);
  expect(issues).toEqual([]);
  expect(specificationFor("A")).toMatchObject({
    air: { low: 4.5, high: 7.5 },
    values: {
      aggregateSize: { size: 19, unit: "mm" },
      densityLow: 1840,
      slumpHigh: { value: 100, unit: "mm" },
      temperatureLow: { value: 10, unit: "°C" },
    },
  });
});

test.each<[headings: string[], settings: string[], takenFor: string[]]>([
  [
    ["Header", "Read as", "Unit", "Setting", "Value"],
    ["End of the scale", "Edition"],
    ["second reading", "not ours"],
  ],
  [
    ["Encabezado", "Tomado como", "Unidad", "Ajuste", "Valor"],
    ["Fin de la escala", "Edición"],
    ["segunda lectura", "no es nuestra"],
  ],
  [
    ["En-tête", "Pris pour", "Unité", "Réglage", "Valeur"],
    ["Fin de l’échelle", "Édition"],
    ["deuxième lecture", "ignorer"],
  ],
  [
    ["Überschrift", "Gelesen als", "Einheit", "Einstellung", "Wert"],
    ["Ende der Skala", "Ausgabe"],
    ["zweite Ablesung", "nicht unsere"],
  ],
])("columns and settings are written in other languages, %j", (headings, settings, takenFor) => {
  const setup = readSetup([
    headings,
    ["A", takenFor[0]!, null, settings[0]!, 10],
    ["B", takenFor[1]!, null, settings[1]!, "C94-98"],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.columns).toEqual([
    { header: "A", field: "second" },
    { header: "B", field: "not ours" },
  ]);
  expect(setup).toMatchObject({ scaleEnd: 10, everywhere: { deliveryStandard: "C94-98" } });
});

test("notes of people beside the tables say nothing, and a setting without a value sets nothing", () => {
  const setup = readSetup([
    ["Header", "Taken for", "Unit", "Note", "Setting", "Value", "Remarks"],
    ["R 1", "first", null, "asked Brinnock", "End of the scale", null, "to be read on the meter"],
  ]);
  expect(setup.issues).toEqual([]);
  expect(setup.scaleEnd).toBeUndefined();
});

test("lines are counted as the sheet counts them", () => {
  const { issues } = readSetup([COLUMNS, ["R 1", "fist"]], ".", 5);
  expect(issues.map(({ values }) => values.line)).toEqual([6]);
});

test("5,000 mixes are read, and each is found by its name in any case and spacing", () => {
  const lines = Array.from({ length: 5000 }, (_, i) => [`LW ${i}`, 4 + (i % 10) / 10, 8]);
  const setup = readSetup([["Mix", "Low", "High"], ...lines]);
  expect(setup.issues).toEqual([]);
  expect(setup.specificationFor(" lw  4321 ")).toMatchObject({ air: { low: 4.1, high: 8 } });
});

test("a wrong line does not hide the others, and the same said twice is no dispute", () => {
  const setup = readSetup([COLUMNS, ["A", "fist"], ["B", "first"], ["b", "First reading"]]);
  expect(setup.issues).toHaveLength(1);
  expect(setup.columns).toEqual([{ header: "B", field: "first" }]);
});

test.each<[Cells]>([[[[null]]], [[]], [[["", " "]]]])(
  "nothing given, %j, says nothing",
  (cells) => {
    expect(readSetup(cells)).toMatchObject({
      columns: [],
      limitsAir: false,
      everywhere: {},
      issues: [],
    });
  },
);
