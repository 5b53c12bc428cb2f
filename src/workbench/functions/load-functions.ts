import { customFunctionsFor, type Implementation } from "./custom-functions";
import { declarationsFrom, type Declaration } from "./declaration";

/** A worksheet function, ready to be put into a spreadsheet. */
export interface LoadedFunction {
  readonly declaration: Declaration;
  readonly implementation: Implementation;
}

/**
 * Loads the worksheet functions the way Excel does: functions.js registers what functions.json
 * declares. Both are the very files of the add-in.
 */
export async function loadFunctions(): Promise<LoadedFunction[]> {
  const implementations = new Map<string, Implementation>();
  Object.assign(globalThis, { CustomFunctions: customFunctionsFor(implementations) });
  const [declarations] = await Promise.all([readDeclarations(), runScript("functions.js")]);
  return declarations.map((declaration) => {
    const implementation = implementations.get(declaration.id);
    if (!implementation) throw new Error(`functions.js does not register ${declaration.id}`);
    return { declaration, implementation };
  });
}

async function readDeclarations(): Promise<Declaration[]> {
  const response = await fetch("functions.json");
  return declarationsFrom(await response.json());
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
