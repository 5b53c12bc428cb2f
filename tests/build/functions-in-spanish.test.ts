import { readFileSync } from "node:fs";

/*
 * What Excel and the pane show of the functions in Spanish, as built. How Excel finds the file: the vendor's
 * page on naming and localizing custom functions (an override of the metadata's address by locale).
 */

interface Declared {
  functions: {
    id: string;
    name: string;
    description: string;
    helpUrl: string;
    parameters: { name: string; description: string; optional?: boolean }[];
  }[];
}
const declared = (file: string) => JSON.parse(readFileSync(`dist/${file}`, "utf8")) as Declared;
const english = declared("functions.json");
const spanish = declared("functions-es.json");

const withoutWords = ({ functions, ...settings }: Declared) => ({
  ...settings,
  functions: functions.map(({ parameters, ...rest }) => ({
    ...rest,
    description: "",
    helpUrl: rest.helpUrl.replace("funciones", "functions"),
    parameters: parameters.map((each) => ({ ...each, description: "" })),
  })),
});
const sentences = ({ functions }: Declared) =>
  functions.flatMap(({ description, parameters }) => [
    description,
    ...parameters.map((each) => each.description),
  ]);

test("nothing but the words and the page with the help differs", () => {
  expect(withoutWords(spanish)).toEqual(withoutWords(english));
});

test("no word is left in English, but for what is typed and what cells show", () => {
  const words = /\b(?:the|and|of|or|with|without|which|unless|given|than|from|where|its)\b/i;
  const typed = /"[^"]*"/g;
  expect(sentences(spanish).filter((each) => words.test(each.replace(typed, "")))).toEqual([]);
  expect(sentences(english).filter((each) => words.test(each)).length).toBeGreaterThan(100);
});

test("what is typed, what cells show, numbers and standards are the same in both", () => {
  const kept = (sentence: string) =>
    [...sentence.matchAll(/"[^"]*"|\d+(?:\.\d+)?|[A-Z]+\.[A-Z.]*[A-Z]/g)]
      .map(([each]) => each)
      .sort();
  const [one, other] = [english, spanish].map((each) => sentences(each).map(kept));
  const differing = one!.flatMap((each, i) =>
    each.join() === other![i]!.join() ? [] : [[sentences(spanish)[i], each, other![i]]],
  );
  expect(differing).toEqual([]);
});

test.each(["es-ES", "es-MX"])("the manifest names the file to an Excel in %s", (locale) => {
  const manifest = readFileSync("dist/manifest.xml", "utf8");
  const [, url] = new RegExp(
    `id="Functions.Metadata.Url"[^]*?<bt:Override Locale="${locale}" Value="([^"]*)"`,
  ).exec(manifest)!;
  expect(url).toMatch(/^https:.*\/functions-es\.json$/);
});
