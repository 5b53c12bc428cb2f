import type { MessageId } from "../messages/catalogue";

/** What a sentence of the catalogue is filled with. */
export type MessageValues = Readonly<Record<string, string | number>>;

/**
 * Why a result cannot be given. It carries the id of a sentence and the values for it; the words
 * are put on at the edge, where it is also known in which cell or argument the cause stands.
 *
 * `unavailable` tells a result that does not exist yet or never will (a further reading is needed,
 * the test is void) from an input that is wrong.
 */
export class Problem extends Error {
  constructor(
    readonly id: MessageId,
    readonly values: MessageValues = {},
    readonly unavailable = false,
  ) {
    super(id);
    this.name = "Problem";
  }
}
