import type { commandLineWords as english } from "../english/command-line-words";
import type { SameSentences } from "../sentence";

/** How the lines of the command line are put together. */
export const commandLineWords: SameSentences<typeof english> = {
  "line-row": ({ row }) => `fila ${row}`,
  "line-finding": ({ where, weight, message, sample }) =>
    `${where}: ${weight}: ${sample === "" ? "" : `${sample}: `}${message}`,
  "line-test": ({ where, sample, state, air, specification }) =>
    `${where}: prueba ${sample}: ${[state, air === "" ? "" : `${air} % de aire`, specification].filter((word) => word !== "").join(", ")}`,
  "line-sheet": ({ where, tests, valid, void: voided, incomplete, findings, notLookedAt }) =>
    `${where}: pruebas: ${tests} (válidas ${valid}, anuladas ${voided}, incompletas ${incomplete}); hallazgos: ${findings}. ${notLookedAt}`.trimEnd(),
  "line-not-read": ({ where, message }) => `${where}: no se leyó: ${message}`,
  "command-line-help": `Revisa pruebas volumétricas de aire de concreto fresco en libros y archivos CSV.

  fresh-check [opciones] archivo.xlsx otros/*.csv
  … | fresh-check [opciones] -

Un "-" lee CSV o líneas JSON de la entrada estándar, de cualquier longitud.

  --json           un objeto JSON por línea
  --tests          también una línea por prueba: su estado, aire y especificación
  --low, --high    límites de la especificación en %, en lugar de los de las hojas
  --setup ARCHIVO  qué contienen las columnas y qué se especifica por mezcla: CSV, o un
                   libro con una hoja "Fresh setup"
  --decimal ,      los textos llevan coma decimal
  --language en    habla inglés, o español con es; si no, como la máquina
  --               lo que sigue son nombres de archivos
  --help           este texto

Termina con 0 si no se encontró nada, 1 si se encontró algo, 2 si algo no se pudo leer.
`,
};
