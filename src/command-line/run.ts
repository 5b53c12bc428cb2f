import type { CheckOptions } from "../fieldsheet/check-options";
import { Problem } from "../measure/problem";
import { commandLineWords } from "../messages/english/command-line-words";
import { say, sentenceOf } from "../messages/pane-catalogue";
import { checkFile } from "./check-file";
import { checkStream } from "./check-stream";
import { orderFrom, type Order } from "./order";
import type { Said } from "./said";
import { jsonLine, plainLine } from "./said-line";

/** What the command line needs from the machine. */
export interface Machine {
  /** Reads a file whole. */
  readonly file: (name: string) => Uint8Array;
  /** What comes in on standard input. */
  readonly input: () => AsyncIterable<Uint8Array>;
  /** Writes a line and waits until there is room for more. */
  readonly write: (line: string) => Promise<void>;
  /** Writes a line beside the results. */
  readonly tell: (line: string) => void;
}

/** Nothing found, something found, something not read. */
export type ExitCode = 0 | 1 | 2;

/** Does what the words of a command line ask for. */
export async function run(words: readonly string[], machine: Machine): Promise<ExitCode> {
  let order: Order;
  try {
    order = orderFrom(words);
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    machine.tell(sentenceOf(error.id, error.values));
    return 2;
  }
  if (order.help) {
    await machine.write(commandLineWords.help);
    return 0;
  }
  const line = order.json ? jsonLine : plainLine;
  let code: ExitCode = 0;
  for (const name of order.files)
    for await (const said of checked(name, order, machine)) {
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
): AsyncGenerator<Said> {
  const options: CheckOptions = { low, high, decimal };
  try {
    if (name === "-") yield* checkStream(name, machine.input(), options, tests);
    else yield* checkFile(name, () => contentOf(name, machine), options, tests);
  } catch (error) {
    // One file that fails for a reason nobody thought of never hides the others.
    if (!(error instanceof Problem)) machine.tell(String(error));
    const message =
      error instanceof Problem ? sentenceOf(error.id, error.values) : say("pane-unexpected");
    yield { kind: "not read", file: name, message, amiss: true };
  }
}

function contentOf(name: string, machine: Machine): Uint8Array {
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
