import { catalogue } from "./catalogue";
import { cautionMessages } from "./english/cautions";
import { commandLineMessages } from "./english/command-line";
import { fileMessages } from "./english/files";
import { hostMessages } from "./english/hosts";
import { paneMessages } from "./english/pane";
import { paneCheckMessages } from "./english/pane-check";
import { paneReportMessages } from "./english/pane-report";
import { paneReviewMessages } from "./english/pane-review";
import { paneTestMessages } from "./english/pane-test";
import { paneTrendMessages } from "./english/pane-trend";
import { workbenchMessages } from "./english/workbench";
import { filled, joined, type ValuesFor, type Words } from "./sentence";

/** Every sentence that a user can read: the engine's, and those of pane, workbench and hosts. */
export const everySentence = {
  ...catalogue,
  ...paneMessages,
  ...paneCheckMessages,
  ...paneTestMessages,
  ...paneTrendMessages,
  ...paneReportMessages,
  ...paneReviewMessages,
  ...cautionMessages,
  ...commandLineMessages,
  ...fileMessages,
  ...hostMessages,
  ...workbenchMessages,
} as const;

/** The id of any sentence. */
export type MessageId = keyof typeof everySentence;

/** What any sentence needs besides its id. */
export type MessageValues<Id extends MessageId> = ValuesFor<typeof everySentence, Id>;

/** The sentence of an id whose values were typed where it was made, after its place. */
export function sentenceOf(id: MessageId, values: Words, place = ""): string {
  return joined(place, filled(everySentence[id], values));
}

/** Fills any sentence. A missing value does not compile. */
export function say<Id extends MessageId>(id: Id, ...[values]: MessageValues<Id>): string {
  return sentenceOf(id, (values ?? {}) as Words);
}
