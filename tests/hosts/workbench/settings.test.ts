import { KeptSettings } from "../../../src/hosts/workbench/settings";

/** What a browser keeps. */
const kept = new Map<string, string>();

beforeEach(() => {
  kept.clear();
  Object.assign(globalThis, {
    localStorage: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
      removeItem: (key: string) => void kept.delete(key),
    },
  });
});
afterEach(() => void Reflect.deleteProperty(globalThis, "localStorage"));

test("what is said of one workbook does not get into another, what holds for all does", () => {
  new KeptSettings("bridge.csv").keep({ low: "5", "report-project": "Kestrel viaduct" });
  expect(new KeptSettings("bridge.csv").read()).toEqual({
    low: "5",
    "report-project": "Kestrel viaduct",
  });
  expect(new KeptSettings("tower.csv").read()).toEqual({ low: "5" });
});

test("what was taken out again is kept no more", () => {
  const settings = new KeptSettings("bridge.csv");
  settings.keep({ "report-project": "Kestrel viaduct" });
  settings.keep({ "report-project": "" });
  expect([...kept.keys()]).toEqual(["fresh-concrete-settings"]);
});

test("in a browser that keeps nothing they last until the page is closed", () => {
  Reflect.deleteProperty(globalThis, "localStorage");
  const settings = new KeptSettings("bridge.csv");
  settings.keep({ low: "5" });
  expect(settings.read()).toEqual({ low: "5" });
});
