import { acceptanceMessages } from "./acceptance";
import { cautionMessages } from "./cautions";
import { fieldsheetMessages } from "./fieldsheet";
import { hostMessages } from "./hosts";
import { measureMessages } from "./measure";
import { neighbouringTestsMessages } from "./neighbouring-tests";
import { paneMessages } from "./pane";
import { ruleMessages } from "./rules";
import { slipMessages } from "./slips";
import { volumetricAirMessages } from "./volumetric-air";
import { workbenchMessages } from "./workbench";

/** Every sentence that a user can read, by id. `{name}` is filled with a value. */
export const catalogue = {
  ...measureMessages,
  ...acceptanceMessages,
  ...volumetricAirMessages,
  ...fieldsheetMessages,
  ...ruleMessages,
  ...slipMessages,
  ...neighbouringTestsMessages,
  ...paneMessages,
  ...cautionMessages,
  ...hostMessages,
  ...workbenchMessages,
} as const;

/** The id of a sentence. */
export type MessageId = keyof typeof catalogue;

/**
 * Fills a sentence of the catalogue.
 *
 * @param id Which sentence.
 * @param values What its `{placeholders}` stand for. A placeholder without a value is left out.
 */
export function say(id: MessageId, values: Readonly<Record<string, string | number>> = {}): string {
  const sentence = catalogue[id].replace(/\{(\w+)\}/g, (_, name: string) =>
    String(values[name] ?? ""),
  );
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
