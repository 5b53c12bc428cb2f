import type { everySentence } from "../pane-catalogue";
import type { SameSentences } from "../sentence";
import { acceptanceMessages } from "./acceptance";
import { besideCellsMessages } from "./beside-cells";
import { cautionMessages } from "./cautions";
import { columnSlipMessages } from "./column-slips";
import { commandLineMessages } from "./command-line";
import { commandLineWords } from "./command-line-words";
import { decisionMessages } from "./decisions";
import { fieldNames } from "./field-names";
import { fieldsheetMessages } from "./fieldsheet";
import { fileKindMessages } from "./file-kinds";
import { fileMessages } from "./files";
import { hostMessages } from "./hosts";
import { listMessages } from "./lists";
import { measureMessages } from "./measure";
import { neighbouringTestsMessages } from "./neighbouring-tests";
import { paneMessages } from "./pane";
import { paneBiasMessages } from "./pane-bias";
import { paneCheckMessages } from "./pane-check";
import { paneFunctionsMessages } from "./pane-functions";
import { paneReportMessages } from "./pane-report";
import { paneReviewMessages } from "./pane-review";
import { paneSetupMessages } from "./pane-setup";
import { paneTestMessages } from "./pane-test";
import { paneTrendMessages } from "./pane-trend";
import { quantityNames } from "./quantities";
import { readingMessages } from "./reading";
import { ruleNames } from "./rule-names";
import { ruleMessages } from "./rules";
import { setupMessages } from "./setup";
import { setupSheetMessages } from "./setup-sheet";
import { slipMessages } from "./slips";
import { volumetricAirMessages } from "./volumetric-air";
import { workbenchMessages } from "./workbench";

/** Every sentence in Spanish. One that is missing does not compile. */
export const spanish: SameSentences<typeof everySentence> = {
  ...listMessages,
  ...measureMessages,
  ...quantityNames,
  ...fieldNames,
  ...acceptanceMessages,
  ...decisionMessages,
  ...volumetricAirMessages,
  ...fieldsheetMessages,
  ...readingMessages,
  ...ruleMessages,
  ...setupMessages,
  ...slipMessages,
  ...columnSlipMessages,
  ...neighbouringTestsMessages,
  ...paneMessages,
  ...paneCheckMessages,
  ...paneTestMessages,
  ...paneTrendMessages,
  ...paneBiasMessages,
  ...paneFunctionsMessages,
  ...paneReportMessages,
  ...paneReviewMessages,
  ...paneSetupMessages,
  ...setupSheetMessages,
  ...cautionMessages,
  ...commandLineMessages,
  ...commandLineWords,
  ...fileMessages,
  ...fileKindMessages,
  ...besideCellsMessages,
  ...hostMessages,
  ...ruleNames,
  ...workbenchMessages,
};
