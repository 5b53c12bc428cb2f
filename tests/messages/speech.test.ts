import { say, sentenceOf } from "../../src/messages/pane-catalogue";
import { languageOf } from "../../src/messages/language";
import { learn, speak } from "../../src/messages/speech";
import { spanish } from "../../src/messages/spanish";

afterEach(() => speak({ language: "en", decimal: "." }));

test("says a sentence in the language in use, and its numbers with the decimal mark", () => {
  const values = { third: 5.5, second: 6.25 };
  expect(say("readings-disagree", values)).toBe(
    "The third reading, 5.5 %, differs from the second, 6.25 %, by more than 0.25 %. The test is void: repeat it with more alcohol.",
  );
  speak({ decimal: "," });
  expect(say("readings-disagree", values)).toContain("5,5 %, differs from the second, 6,25 %");
  learn("es", spanish);
  speak({ language: "es" });
  expect(say("readings-disagree", values)).toBe(
    "La tercera lectura, 5,5 %, difiere de la segunda, 6,25 %, en más de 0,25 %. La prueba queda anulada: repítala con más alcohol.",
  );
});

test("a text is put in as somebody wrote it, whatever the decimal mark", () => {
  speak({ decimal: "," });
  expect(say("not-a-number", { value: "5.2.5" })).toBe(
    "“5.2.5” is not a number. Type a number, such as 5,25.",
  );
});

test.each([
  ["en", "file-of-another-kind", "it holds a PDF document."],
  ["es", "file-of-another-kind", "contiene un documento PDF."],
] as const)("words of the catalogue are said in the language in use: %s", (language, id, end) => {
  learn("es", spanish);
  speak({ language });
  expect(sentenceOf(id, { name: "a.xlsx", kind: { say: "holds-pdf" } })).toContain(end);
});

test.each([
  ["en", ["mix", "load"], "mix or load"],
  ["en", ["mix", "load", "day"], "mix, load or day"],
  ["es", ["mezcla", "día"], "mezcla o día"],
  // Before a word that begins with the sound of "o" Spanish has "u".
  ["es", ["día", "hora"], "día u hora"],
  ["es", ["día", "otro"], "día u otro"],
  ["es", ["día"], "día"],
] as const)("one of several in %s: %p", (language, either, said) => {
  learn("es", spanish);
  speak({ language });
  expect(sentenceOf("column-may-be", { mayBe: { either } })).toContain(said);
});

test.each([
  ["es", "es"],
  ["es-MX", "es"],
  ["es_MX.UTF-8", "es"],
  ["ES", "es"],
  ["en-US", "en"],
  ["est", "en"],
  ["de-DE", "en"],
  ["C", "en"],
  ["", "en"],
  [undefined, "en"],
])("the language of the locale %p is %s", (locale, language) => {
  expect(languageOf(locale)).toBe(language);
});
