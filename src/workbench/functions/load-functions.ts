import { FUNCTIONS_FILES } from "../../messages/functions-file";
import type { Language } from "../../messages/language";
import { customFunctionsFor, type Implementation } from "./custom-functions";
import { declarationsFrom, examplesFrom, type Declaration } from "./declaration";

/** A worksheet function, ready to be put into a spreadsheet. */
export interface LoadedFunction {
  readonly declaration: Declaration;
  /** What it says in each language. */
  readonly help: Readonly<Record<Language, Declaration>>;
  readonly implementation: Implementation;
  /** Arguments of an example of a call, each as it is written in a formula. */
  readonly example: readonly string[];
}

/**
 * Loads the worksheet functions the way Excel does: functions.js registers what functions.json
 * declares. Both are the very files of the add-in; examples.json is for the workbench alone.
 */
export async function loadFunctions(): Promise<LoadedFunction[]> {
  const implementations = new Map<string, Implementation>();
  Object.assign(globalThis, { CustomFunctions: customFunctionsFor(implementations) });
  const [english, spanish, examples] = await Promise.all([
    read(FUNCTIONS_FILES.en).then(declarationsFrom),
    read(FUNCTIONS_FILES.es).then(declarationsFrom),
    read("examples.json").then(examplesFrom),
    runScript("functions.js"),
  ]);
  return english.map((declaration, i) => {
    const { id, name } = declaration;
    const implementation = implementations.get(id);
    if (!implementation) throw new Error(`functions.js does not register ${id}`);
    const help = { en: declaration, es: spanish[i]! };
    return { declaration, help, implementation, example: examples[name] ?? [] };
  });
}

async function read(file: string): Promise<unknown> {
  const response = await fetch(file);
  return response.json();
}

function runScript(src: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = src;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(`${src} cannot be loaded`)));
    document.head.append(script);
  });
}
