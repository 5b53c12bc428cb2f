import { folded } from "../../measure/folded";
import type { FunctionHelp } from "./function-help";

/**
 * Words under which people of the trade look for a function and that its help does not have ("common
 * practice"), by the beginning of its name; in English and in Spanish.
 */
const TRADE_WORDS: readonly (readonly [name: string, words: string])[] = [
  ["AIR", "entrained air content roller meter aire incluido contenido medidor"],
  ["ALCOHOL", "isopropyl isopropanol rubbing isopropilico correccion"],
  ["READING", "meter roller lectura medidor"],
  ["LEVEL", "foam settle meniscus espuma nivel"],
  ["CHECK", "field sheet validate void revisar hoja prueba nula"],
  ["FINDINGS", "errors list validate hallazgos errores"],
  ["DENSITY", "unit weight plastic weight lightweight peso unitario masa unitaria densidad ligero"],
  ["BATCH", "yield cubic yards rendimiento"],
  ["RELATIVE", "yield short load rendimiento relativo"],
  ["CEMENT", "content sacks cemento consumo"],
  ["WATER", "w/c ratio agua relacion"],
  ["STRENGTH", "compressive cylinder break psi MPa resistencia cilindro"],
  ["SPEC", "specification limits tolerance accept reject especificacion tolerancia"],
  ["CHART", "control chart trend mean carta control tendencia"],
  ["AGREEMENT", "precision two operators precision"],
  ["BIAS", "operators compare sesgo laboratoristas"],
  ["TESTS", "frequency how often cubic yards frecuencia muestreo"],
  ["DISPOSITION", "load reject accept truck carga aceptar rechazar"],
  ["REGISTER", "calibration equipment due calibracion equipo"],
  ["EVAPORATION", "plastic shrinkage cracking wind evaporacion contraccion"],
  ["BOWL", "calibration measure volume calibracion recipiente"],
  ["CUP", "calibrated cup vaso calibrado"],
  ["ROUND", "nearest quarter redondear"],
  ["SUMMARY", "average by mix day promedio resumen"],
];

interface Searched {
  readonly of: FunctionHelp;
  readonly name: string;
  readonly words: string;
}

const KNOWN = new WeakMap<readonly FunctionHelp[], readonly Searched[]>();

/**
 * Finds functions by their names, by words of their help and by words of the trade.
 *
 * @param typed The beginning of a name, or one or more beginnings of words, which must all be found. Nothing
 *   finds every function.
 * @returns Those whose name begins so first, else in the order of the help.
 */
export function findFunctions(
  functions: readonly FunctionHelp[],
  typed: string,
): readonly FunctionHelp[] {
  const known = KNOWN.get(functions) ?? functions.map(searched);
  KNOWN.set(functions, known);
  const wanted = plain(typed.replace(/^=?\s*fresh\./i, "")).trim();
  if (wanted === "") return functions;
  const parts = wanted.split(" ");
  const isName = /[.=]/.test(typed);
  const found = known.filter(({ name, words }) =>
    isName ? name.startsWith(wanted) : parts.every((part) => words.includes(` ${part}`)),
  );
  const byName = found.filter(({ name }) => name.startsWith(wanted));
  const others = found.filter((one) => !byName.includes(one));
  return [...byName, ...others].map(({ of }) => of);
}

function searched(of: FunctionHelp): Searched {
  const { name, description, parameters } = of;
  const trade = TRADE_WORDS.flatMap(([begin, words]) => (name.startsWith(begin) ? [words] : []));
  const help = parameters.flatMap((each) => [each.name, each.description]);
  const words = [name, description, ...help, ...trade].join(" ");
  return { of, name: plain(name), words: ` ${plain(words)}` };
}

/** Lower case, without accents, with one space between words. */
function plain(text: string): string {
  return folded(text)
    .replace(/[^\p{L}\d/]+/gu, " ")
    .replace(/ +/g, " ");
}
