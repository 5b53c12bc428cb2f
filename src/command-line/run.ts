import type { CheckOptions } from "../fieldsheet/check-options";
import { Problem } from "../measure/problem";
import { languageOf } from "../messages/language";
import { say, sentenceOf } from "../messages/pane-catalogue";
import { spanish } from "../messages/spanish";
import { learn, speak } from "../messages/speech";
import { checkFile } from "./check-file";
import { checkStream } from "./check-stream";
import type { Setup } from "../reading/setup/setup";
import { orderFrom, type Order } from "./order";
import { setupOfFile } from "./setup-of-file";
import type { Said } from "./said";
import { jsonLine, plainLine } from "./said-line";

/** A file that can be read whole or piece by piece. */
export interface FileOnDisk {
  /** Bytes. */
  readonly size: number;
  whole(): Uint8Array;
  pieces(): AsyncIterable<Uint8Array>;
}

/** What the command line needs from the machine. */
export interface Machine {
  /** That of whoever works on it, such as "es_MX.UTF-8". */
  readonly locale?: string;
  /** Looks a file up; throws where it is not there. */
  readonly file: (name: string) => FileOnDisk;
  /** What comes in on standard input. */
  readonly input: () => AsyncIterable<Uint8Array>;
  /** Writes a line and waits until there is room for more. */
  readonly write: (line: string) => Promise<void>;
  /** Writes a line beside the results. */
  readonly tell: (line: string) => void;
}

/** Bytes. A larger file of text is read piece by piece. */
const LARGE = 64e6;
const WORKBOOK = /\.(?:xls[xmb]?|ods)$/i;

/** Nothing found, something found, something not read. */
export type ExitCode = 0 | 1 | 2;

/** Does what the words of a command line ask for. */
export async function run(words: readonly string[], machine: Machine): Promise<ExitCode> {
  let order: Order;
  let setup: Setup | undefined;
  let ofSetup: readonly Said[] = [];
  learn("es", spanish);
  speak({ language: languageOf(machine.locale) });
  try {
    order = orderFrom(words);
    speak({ decimal: order.decimal, ...(order.language && { language: order.language }) });
    if (order.setup !== undefined && !order.help) {
      const bytes = fileNamed(order.setup, machine).whole();
      const read = await setupOfFile(order.setup, bytes, order.decimal);
      [setup, ofSetup] = [read.setup, read.remarks];
    }
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    machine.tell(sentenceOf(error.id, error.values));
    return 2;
  }
  if (order.help) {
    await machine.write(say("command-line-help"));
    return 0;
  }
  const line = order.json ? jsonLine : plainLine;
  let code: ExitCode = 0;
  for (const said of ofSetup) {
    code = Math.max(code, codeOf(said)) as ExitCode;
    await machine.write(line(said));
  }
  for (const name of order.files)
    for await (const said of checked(name, order, machine, setup)) {
      code = Math.max(code, codeOf(said)) as ExitCode;
      await machine.write(line(said));
    }
  if (!order.json) machine.tell(say("caution-deferral"));
  return code;
}

async function* checked(
  name: string,
  { tests, low, high, decimal }: Order,
  machine: Machine,
  setup: Setup | undefined,
): AsyncGenerator<Said> {
  const options: CheckOptions = { low, high, decimal, setup };
  try {
    const file = name === "-" ? undefined : fileNamed(name, machine);
    if (!file) yield* checkStream(name, machine.input(), options, tests);
    else if (file.size > LARGE && !WORKBOOK.test(name))
      yield* checkStream(name, file.pieces(), options, tests);
    else yield* checkFile(name, () => file.whole(), options, tests);
  } catch (error) {
    // One file that fails for a reason nobody thought of never hides the others.
    if (!(error instanceof Problem)) machine.tell(String(error));
    const message =
      error instanceof Problem ? sentenceOf(error.id, error.values) : say("pane-unexpected");
    yield { kind: "not read", file: name, message, amiss: true };
  }
}

function fileNamed(name: string, machine: Machine): FileOnDisk {
  try {
    return machine.file(name);
  } catch {
    throw new Problem("file-not-found", { name });
  }
}

function codeOf(said: Said): ExitCode {
  if (said.kind === "finding") return 1;
  return said.kind === "not read" && said.amiss ? 2 : 0;
}
