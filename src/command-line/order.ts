import type { DecimalMark } from "../measure/number-from-cell";
import { LANGUAGES, type Language } from "../messages/language";
import { Problem } from "../measure/problem";

/** What somebody asks for on the command line. */
export interface Order {
  /** Names of files; "-" is what comes in on standard input. */
  readonly files: readonly string[];
  /** One JSON object a line instead of lines to be read by people. */
  readonly json: boolean;
  /** Also a line for each test, with its state and air. */
  readonly tests: boolean;
  readonly low?: number;
  readonly high?: number;
  readonly decimal: DecimalMark;
  /** In which language to speak; that of the machine where nothing is said. */
  readonly language?: Language;
  /** Name of the file that holds the setup. */
  readonly setup?: string;
  readonly help: boolean;
}

/**
 * Reads the words of a command line.
 *
 * @throws Problem `option-unknown`, `option-needs-number`, `option-needs-file`, `option-decimal`, `option-language`,
 *   `no-file-named`.
 */
export function orderFrom(words: readonly string[]): Order {
  const files: string[] = [];
  const order = { json: false, tests: false, help: false, decimal: "." as DecimalMark };
  const given: { low?: number; high?: number; setup?: string; language?: Language } = {};
  const waiting = [...words];
  let onlyFiles = false;
  for (let word = waiting.shift(); word !== undefined; word = waiting.shift()) {
    if (onlyFiles || word === "-" || !word.startsWith("-")) files.push(word);
    else if (word === "--") onlyFiles = true;
    else if (word === "--json") order.json = true;
    else if (word === "--tests") order.tests = true;
    else if (word === "--help" || word === "-h") order.help = true;
    else if (word === "--low" || word === "--high")
      given[word === "--low" ? "low" : "high"] = numberAfter(word, waiting.shift());
    else if (word === "--decimal") order.decimal = decimalMark(waiting.shift());
    else if (word === "--language") given.language = languageNamed(waiting.shift());
    else if (word === "--setup") given.setup = fileAfter(word, waiting.shift());
    else throw new Problem("option-unknown", { option: word });
  }
  if (files.length === 0 && !order.help) throw new Problem("no-file-named");
  return { ...order, ...given, files };
}

function numberAfter(option: string, word = ""): number {
  const number = Number(word.trim().replace(",", "."));
  if (word.trim() === "" || !Number.isFinite(number))
    throw new Problem("option-needs-number", { option, value: word });
  return number;
}

function fileAfter(option: string, word = ""): string {
  if (word === "" || word.startsWith("-")) throw new Problem("option-needs-file", { option });
  return word;
}

function decimalMark(word = ""): DecimalMark {
  if (word !== "." && word !== ",") throw new Problem("option-decimal", { value: word });
  return word;
}

function languageNamed(word = ""): Language {
  const language = LANGUAGES.find((code) => code === word.toLowerCase());
  if (!language) throw new Problem("option-language", { value: word });
  return language;
}
