import { RULES } from "../../src/fieldsheet/rules";
import { ruleNames } from "../../src/messages/english/rule-names";
import { everySentence } from "../../src/messages/pane-catalogue";
import { besideCellsMessages } from "../../src/messages/english/beside-cells";
import { startPageMessages } from "../../src/messages/english/start-page";
import { startPageMessages as spanishStartPage } from "../../src/messages/spanish/start-page";
import { spanish } from "../../src/messages/spanish";
import type { SameSentences, Sentence, Words } from "../../src/messages/sentence";

/** A sentence with the name of each value in its place, and with its own numbers in brackets. */
function shown(sentence: Sentence, value: (name: string) => string): string {
  if (typeof sentence === "string") return sentence;
  const words = new Proxy({} as Words, { get: (_, name) => value(String(name)) });
  return sentence(words as never, (number) => `[${number}]`);
}

const named = (sentence: Sentence) => shown(sentence, (name) => `‹${name}›`);
const parts = (text: string, pattern: RegExp) => [...new Set(text.match(pattern))].sort();
const VALUES = /‹\w+›/g;
const OWN_NUMBERS = /\[[\d.]+\]/g;

/** Start page sentences as a list by id. */
function flat(messages: object): Record<string, Sentence> {
  return Object.fromEntries(
    Object.entries(messages).flatMap(([id, said]) =>
      typeof said === "object"
        ? Object.entries(said as object).map(([part, each]) => [`${id} ${part}`, each as Sentence])
        : [[id, said as Sentence]],
    ),
  );
}

const english: Record<string, Sentence> = { ...everySentence, ...flat(startPageMessages) };
const twins: Record<string, Sentence> = { ...spanish, ...flat(spanishStartPage) };
const pairs = Object.entries(english).map(([id, said]) => [id, said, twins[id]!] as const);

test("every sentence has its twin, and no twin is left over", () => {
  expect(Object.keys(twins).sort()).toEqual(Object.keys(english).sort());
});

test("every rule has a name, and what it is called in English are the words of its id", () => {
  for (const { id } of RULES) expect(ruleNames).toHaveProperty([`rule-${id}`]);
  for (const [id, name] of Object.entries(ruleNames))
    expect(`rule-${name.replaceAll(" ", "-")}`).toBe(id);
});

test("a twin that is missing, or that asks for another value, does not compile", () => {
  interface One {
    readonly text: string;
    readonly filled: (words: Words<"value">) => string;
  }
  type Twin = SameSentences<{ [Id in keyof One]: One[Id] }>;
  // @ts-expect-error: a sentence is missing
  const missing: Twin = { text: "" };
  // @ts-expect-error: a value that is not given
  const other: Twin = { text: "", filled: ({ unit }) => unit };
  // @ts-expect-error: a text where values are given
  const text: Twin = { text: "", filled: "" };
  expect([missing, other, text]).toHaveLength(3);
});

test("a sentence and its twin show the same values and the same numbers of their own", () => {
  const differ = pairs.filter(
    ([, said, twin]) =>
      `${parts(named(said), VALUES)}` !== `${parts(named(twin), VALUES)}` ||
      `${parts(named(said), OWN_NUMBERS)}` !== `${parts(named(twin), OWN_NUMBERS)}`,
  );
  expect(differ.map(([, said, twin]) => [named(said), named(twin)])).toEqual([]);
});

test("a sentence and its twin end alike and begin alike, large or small", () => {
  const end = (text: string) => /[.:;?!…]?$/.exec(text.trim())![0];
  const small = (text: string) => /^\p{Ll}/u.test(text);
  const differ = pairs
    .map(([id, said, twin]) => [id, named(said), named(twin)] as const)
    .filter(([, said, twin]) => end(said) !== end(twin));
  expect(differ).toEqual([]);
  // A text that begins a line on its own begins large in both.
  const begin = pairs
    .map(([id, said, twin]) => [id, named(said), named(twin)] as const)
    .filter(([, said, twin]) => /^\p{Lu}/u.test(said) && small(twin));
  expect(begin).toEqual([]);
});

test("no number with decimals stands in a sentence without the mark in use", () => {
  const bare = (said: Sentence) =>
    named(said)
      .replace(OWN_NUMBERS, "")
      .match(/\b\d+[.]\d+\b/);
  expect(pairs.filter(([, said, twin]) => bare(said) ?? bare(twin)).map(([id]) => id)).toEqual([]);
});

test("one is said otherwise than several", () => {
  for (const id of Object.keys(besideCellsMessages)) {
    expect(shown(twins[id]!, () => "1")).not.toBe(shown(twins[id]!, () => "2").replace("2", "1"));
  }
});

/** Words of everyday English that no Spanish sentence has. */
const ENGLISH =
  /\b(?:the|and|of|is|are|not|with|which|that|this|from|give|look|type|test|tests|row|rows|column|cell|sheet|reading|readings|check|then|again|was|were|for|or|to|at|it|be|has|by|in|on)\b/i;
/** What stands in a Spanish sentence as it is typed, named or written in every language. */
const AS_IT_IS = [
  /"[^"]*"/g, // words that a function takes
  /https?|functions\.js(?:on)?|taskpane\.html|\.\w{2,4}\b|-?-[\w-]+/g,
  /Access-Control-Allow-Origin: \*|Cross-Origin-Resource-Policy: cross-origin/g,
  /X-Frame-Options|frame-ancestors|Content-Security-Policy|Content-Type: text\/javascript/g,
  /Cache-Control: max-age=\d+|npm start|Fresh Concrete Functions|setup\.csv|fresh-check/g,
  /Header y Taken for, Setting y Value, o Mix y|como Low y High/g,
  /‹\w+›/g,
  /\d (?:in|pt|oz|to \S+)\b|\[[\d.]+\] to \[[\d.]+\]/g,
];

test("no English is left in a Spanish sentence", () => {
  const left = pairs.flatMap(([id, , twin]) => {
    const text = AS_IT_IS.reduce((rest, pattern) => rest.replace(pattern, " "), named(twin));
    const word = ENGLISH.exec(text)?.[0];
    return word === undefined ? [] : [`${id}: ${word}: ${text}`];
  });
  expect(left).toEqual([]);
});

test("a Spanish sentence speaks to “usted”", () => {
  const familiar = /(?<!\p{L})(?:tú|tus?|tuy[oa]s?|contigo|puedes|debes|tienes|quieres)(?!\p{L})/iu;
  expect(pairs.filter(([, , twin]) => familiar.test(named(twin))).map(([id]) => id)).toEqual([]);
});

test("a question or an exclamation opens as it closes", () => {
  for (const [, , twin] of pairs) {
    const text = named(twin);
    expect(text.split("¿").length).toBe(
      text.split("?").length - (text.match(/#NAME\?/g) ?? []).length,
    );
  }
});
