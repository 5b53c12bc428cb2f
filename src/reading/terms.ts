/**
 * What a word in a header can mean, whatever its language. A vocabulary gives each term its words, the
 * grammar says which terms together mean a field.
 */
export const TERMS = [
  // the volumetric test
  "reading",
  "first",
  "second",
  "third",
  "further",
  "initial",
  "final",
  "confirming",
  "attempt",
  "cup",
  "alcohol",
  "foam",
  "settle",
  "packed",
  "dispersed",
  "leak",
  "tight",
  "neck",
  "zero",
  "inversion",
  "roll",
  "longest",
  "total",
  "bowl",
  "meter",
  "serial",
  "calibration",
  "volumetric",
  "late",
  "more",
  "before",
  "after",
  "added",
  "amount",
  "left",
  "extent",
  "condition",
  "beyond",
  "site-water",
  "moulded",
  "design-strength",
  "curing-box",
  "decision",
  // results and what is asked of them
  "air",
  "content",
  "result",
  "corrected",
  "uncorrected",
  "correction",
  "reported",
  "measured",
  "specified",
  "limit",
  "low",
  "high",
  "tolerance",
  "gravimetric",
  "pressure",
  // which test
  "sample",
  "lab",
  "test",
  "set",
  "number",
  "load",
  "truck",
  "batch",
  "mix",
  "class",
  "method",
  "type",
  "repeat",
  "check",
  "of",
  "unit",
  "strength",
  // when
  "date",
  "time",
  "day",
  "start",
  "end",
  "sampled",
  "portion",
  "batched",
  "discharged",
  "cast",
  "allowed",
  // the concrete
  "concrete",
  "fresh",
  "aggregate",
  "size",
  "largest",
  "nominal",
  "sieved",
  "density",
  "theoretical",
  "relative",
  "yield",
  "volume",
  "measure",
  "slump",
  "temperature",
  "ambient",
  "humidity",
  "wind",
  "revolution",
  "dimension",
  "speed",
  "water",
  // guards
  "by",
  "person",
  "place",
  "arrival",
  "departure",
  "other-test",
  "weight",
  "statistics",
  "not",
  "in-order",
  "remark",
  "status",
  "company",
  "material",
  "other-matter",
  // what only a unit says
  "share",
  "bulk",
  "by-pint",
  "by-gallon",
] as const;

/** What a word in a header can mean. */
export type Term = (typeof TERMS)[number];

/** Why a column is none of ours. */
export type Guard =
  | "person"
  | "place"
  | "arrival"
  | "departure"
  | "other test"
  | "remark"
  | "status"
  | "company"
  | "material"
  | "calculation"
  | "running number"
  | "other matter"
  | "setup";

/** Terms that keep a column from being any field whose words do not ask for them. */
export const GUARD_TERMS: Readonly<Partial<Record<Term, Guard>>> = {
  by: "person",
  person: "person",
  place: "place",
  arrival: "arrival",
  departure: "departure",
  "other-test": "other test",
  strength: "other test",
  pressure: "other test",
  remark: "remark",
  status: "status",
  company: "company",
  material: "material",
  "other-matter": "other matter",
  weight: "other matter",
  statistics: "calculation",
};
