import { readFileSync } from "node:fs";
import vm from "node:vm";
import { EmulatedExcel } from "./emulated-excel";
import { addNotesTo } from "./notes-for-the-client";

/*
 * Microsoft's own client library for Excel, run in Node on an emulated workbook. It is licensed for the
 * development and test of add-ins: it is used here, never copied, changed, bundled or served.
 */

const LIBRARY = require.resolve("@microsoft/office-js/dist/excel-web-16.00.js");

let script: vm.Script | undefined;

/**
 * Starts an emulated Excel with the real client library in front of it, and puts `Excel` and `Office` where
 * the host looks for them. Everything later in the same test file talks to the Excel started last.
 */
export function startExcel(): EmulatedExcel {
  const excel = new EmulatedExcel();
  const bridge = {
    onMessageFromHost: undefined as ((text: string) => void) | undefined,
    sendMessageToHost: (text: string) => excel.receive(text),
  };
  excel.connect((text) => bridge.onMessageFromHost?.(text));
  const library = loadLibrary(bridge);
  const office = {
    context: {
      contentLanguage: "en-US",
      diagnostics: { host: "Excel", platform: "PC", version: "16.0.17928.20114" },
      requirements: {
        isSetSupported: (name: string, version?: string) => excel.isSetSupported(name, version),
      },
    },
  };
  library.window.Office = office;
  addNotesTo(library);
  const { Excel, OfficeExtension } = library;
  // The library on npm ends before undo groups, so that they are opened here.
  const run = Excel.run.bind(Excel);
  Excel.run = (...given: any[]) =>
    given[0]?.mergeUndoGroup === true ? excel.inUndoGroup(() => run(...given)) : run(...given);
  Object.assign(globalThis, { Excel, OfficeExtension, Office: office });
  return excel;
}

function loadLibrary(bridge: object) {
  script ??= new vm.Script(readFileSync(LIBRARY, "utf8"));
  const page: Record<string, any> = {
    console,
    setTimeout: patientTimeout,
    clearTimeout,
    navigator: { userAgent: "node", language: "en-US" },
    location: { href: "http://localhost/", search: "", hash: "", origin: "http://localhost" },
    document: {
      getElementsByTagName: () => [],
      createElement: () => ({ style: {}, setAttribute() {} }),
      head: { appendChild() {} },
      addEventListener() {},
      cookie: "",
    },
    _richApiNativeBridge: bridge,
  };
  page.window = page;
  page.self = page;
  vm.createContext(page);
  try {
    script.runInContext(page);
  } catch (error) {
    // Its stack would be the whole library.
    throw new Error(`the client library did not start: ${(error as Error).message}`);
  }
  return page as { window: Record<string, unknown>; Excel: any; OfficeExtension: any };
}

/** The library tries the release of objects again after seconds; no test waits for that. */
function patientTimeout(act: () => void, delay: number): NodeJS.Timeout {
  return setTimeout(act, delay).unref();
}

/** Waits until the library has let go of what it still held. */
export function untilReleased(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 200));
}
