import { catalogue } from "./catalogue";
import { besideCellsMessages } from "./english/beside-cells";
import { cautionMessages } from "./english/cautions";
import { commandLineMessages } from "./english/command-line";
import { commandLineWords } from "./english/command-line-words";
import { fileKindMessages } from "./english/file-kinds";
import { fileMessages } from "./english/files";
import { hostMessages } from "./english/hosts";
import { paneMessages } from "./english/pane";
import { paneBiasMessages } from "./english/pane-bias";
import { paneCheckMessages } from "./english/pane-check";
import { paneFunctionsMessages } from "./english/pane-functions";
import { paneReportMessages } from "./english/pane-report";
import { paneReviewMessages } from "./english/pane-review";
import { paneSetupMessages } from "./english/pane-setup";
import { paneTestMessages } from "./english/pane-test";
import { paneTrendMessages } from "./english/pane-trend";
import { setupSheetMessages } from "./english/setup-sheet";
import { ruleNames } from "./english/rule-names";
import { workbenchMessages } from "./english/workbench";
import type { ValuesFor } from "./sentence";
import { speakerOf } from "./speech";

/** Every sentence that a user can read: the engine's, and those of pane, workbench and hosts. */
export const everySentence = {
  ...catalogue,
  ...paneMessages,
  ...paneCheckMessages,
  ...paneTestMessages,
  ...paneTrendMessages,
  ...paneBiasMessages,
  ...paneFunctionsMessages,
  ...paneReportMessages,
  ...paneReviewMessages,
  ...cautionMessages,
  ...commandLineMessages,
  ...commandLineWords,
  ...fileMessages,
  ...fileKindMessages,
  ...besideCellsMessages,
  ...hostMessages,
  ...paneSetupMessages,
  ...setupSheetMessages,
  ...ruleNames,
  ...workbenchMessages,
} as const;

/** The id of any sentence. */
export type MessageId = keyof typeof everySentence;

/** What any sentence needs besides its id. */
export type MessageValues<Id extends MessageId> = ValuesFor<typeof everySentence, Id>;

export const { sentenceOf, say, inLine, inWords, phrase } = speakerOf(everySentence);
