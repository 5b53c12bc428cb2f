import { weightOfFormula } from "../mark-tag";
import { codeOf } from "./excel-errors";

/** What Excel says of a conditional format that it lists but cannot show; see `formulasOneByOne`. */
const CANNOT_BE_SHOWN = new Set(["GeneralException", "InvalidOperation", "ItemNotFound"]);

/**
 * The conditional formats of ours among those of sheets, told by their formula; sheet by sheet.
 *
 * Only formats with a formula are looked at, because asking any other kind for its formula fails.
 */
export async function ourFormats(
  context: Excel.RequestContext,
  ofSheets: readonly (readonly Excel.ConditionalFormat[])[],
): Promise<Excel.ConditionalFormat[][]> {
  const candidates = ofSheets.flat().filter(({ type }) => type === "Custom");
  if (candidates.length === 0) return ofSheets.map(() => []);
  const formulas = await formulasOf(context, candidates);
  const ours = new Set(
    candidates.filter((_, i) => weightOfFormula(formulas[i] ?? "") !== undefined),
  );
  return ofSheets.map((formats) => formats.filter((format) => ours.has(format)));
}

async function formulasOf(
  context: Excel.RequestContext,
  formats: readonly Excel.ConditionalFormat[],
): Promise<string[]> {
  try {
    const rules = formats.map(loadRule);
    await context.sync();
    return rules.map(({ formula }) => formula);
  } catch (error) {
    if (!CANNOT_BE_SHOWN.has(codeOf(error))) throw error;
    return formulasOneByOne(context, formats);
  }
}

/**
 * Excel is known to list rules that a user has duplicated and then to fail when asked for them. One such
 * rule must not keep ours from being found, so each is asked on its own; one that fails is not ours.
 */
async function formulasOneByOne(
  context: Excel.RequestContext,
  formats: readonly Excel.ConditionalFormat[],
): Promise<string[]> {
  const formulas: string[] = [];
  for (const format of formats) {
    try {
      const rule = loadRule(format);
      // Each in a sync of its own is the point here, and this happens only after a failure.
      // eslint-disable-next-line office-addins/no-context-sync-in-loop
      await context.sync();
      formulas.push(rule.formula);
    } catch (error) {
      if (!CANNOT_BE_SHOWN.has(codeOf(error))) throw error;
      formulas.push("");
    }
  }
  return formulas;
}

function loadRule(format: Excel.ConditionalFormat): Excel.ConditionalFormatRule {
  const { rule } = format.custom;
  rule.load("formula");
  return rule;
}
