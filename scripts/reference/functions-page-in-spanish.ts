import { readFileSync } from "node:fs";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { examplesIn } from "../../build/function-examples.mjs";
import { inOtherWords } from "../../build/functions-metadata.mjs";
import { functionFiles } from "../functions-record";
import type { Described } from "./functions-page";
import { page, table } from "./markdown";

/** The worksheet functions in Spanish: what each is, its arguments and its examples. */
export async function functionsPageInSpanish(): Promise<string> {
  const files = functionFiles();
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(files);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  const said = JSON.parse(readFileSync("build/function-help/spanish.json", "utf8")) as Record<
    string,
    string
  >;
  const declared = JSON.parse(metadataJson) as { functions: Described[] };
  const { functions } = inOtherWords(declared, said);
  const examples = new Map(
    files.flatMap((file) => [...examplesIn(readFileSync(file, "utf8"))] as const),
  );
  return page(
    "# Funciones de hoja",
    "Todas las funciones del espacio de nombres `FRESH`. Los argumentos entre corchetes pueden omitirse. Donde no se dice otra cosa, un argumento es un valor o un rango; rangos de un tamaño dan un resultado de ese tamaño, y un solo valor, fila o columna vale para todos. Una fila en blanco da un blanco. Una celda que no se puede calcular muestra `#VALUE!` (`#¡VALOR!`), y un resultado que (aún) no existe, `#N/A` (`#N/D`), cada uno con una frase que dice por qué.",
    "Los nombres de las funciones y de sus argumentos, y lo que muestran las celdas (“valid”, “void”, “within”), son los mismos en todos los idiomas. En los ejemplos, `{1,2;3,4}` es un rango: la coma separa celdas lado a lado, el punto y coma separa filas. De dónde sale cada resultado está en [functions](functions.md), en inglés.",
    "Los resultados apoyan, y nunca sustituyen, la especificación del proyecto, los reglamentos locales ni el criterio del ingeniero con licencia y del técnico certificado.",
    ...functions.flatMap((one) => section(one, examples.get(one.name)!)),
  );
}

function section(
  { name, description, parameters }: Described,
  examples: readonly { formula: string; gives: string }[],
): string[] {
  const shown = parameters.map((each) => (each.optional ? `[${each.name}]` : each.name));
  return [
    `## FRESH.${name}`,
    `\`FRESH.${name}(${shown.join(", ")})\``,
    description,
    table(
      ["argumento", "qué es"],
      parameters.map((each, i) => [`\`${shown[i]}\``, each.description]),
    ),
    table(
      ["ejemplo", "da"],
      examples.map(({ formula, gives }) => [`\`${formula}\``, `\`${gives}\``]),
    ),
  ];
}
