import { acceptanceMessages } from "./english/acceptance";
import { columnSlipMessages } from "./english/column-slips";
import { decisionMessages } from "./english/decisions";
import { fieldNames } from "./english/field-names";
import { fieldsheetMessages } from "./english/fieldsheet";
import { listMessages } from "./english/lists";
import { measureMessages } from "./english/measure";
import { neighbouringTestsMessages } from "./english/neighbouring-tests";
import { quantityNames } from "./english/quantities";
import { readingMessages } from "./english/reading";
import { ruleMessages } from "./english/rules";
import { setupMessages } from "./english/setup";
import { slipMessages } from "./english/slips";
import { volumetricAirMessages } from "./english/volumetric-air";
import type { ValuesFor } from "./sentence";
import { speakerOf } from "./speech";

/**
 * Every sentence that a calculation, a worksheet function or a rule can say, by id. What the pane and
 * its hosts say besides stands in pane-catalogue.ts, so that the functions need not carry it.
 */
export const catalogue = {
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
} as const;

/** The id of a sentence of the engine. */
export type SentenceId = keyof typeof catalogue;

/** What a sentence of the engine needs besides its id. */
export type SentenceValues<Id extends SentenceId> = ValuesFor<typeof catalogue, Id>;

export const { sentenceOf, say, phrase } = speakerOf(catalogue);
