import { childElements, childrenOf, escaped, textIn, type Element } from "../package/xml";
import { blockReference, blocksOf, type CellBlock } from "./cell-reference";
import { without, withElement, type SheetText } from "./sheet-part";

/** A conditional format of ours: a formula that names its owner, and where it holds. */
export interface MarkRule {
  /** As a file writes it, without the equals sign. */
  readonly formula: string;
  readonly blocks: readonly CellBlock[];
  /** Colours as the web writes them: "#5b2a4e". */
  readonly fill: string;
  readonly ink: string;
}

interface RuleThere {
  readonly rule: Element;
  readonly group: Element;
  readonly formula: string;
  readonly cells: string;
}

/**
 * A sheet with these rules of ours and no others of ours. Where they stand there already, letter for
 * letter, the sheet is left as it is; rules of others are never touched.
 *
 * @param isOurs Whether the formula of a rule is one that we write.
 * @param formatOf The number of the format in the workbook's styles, for a rule to be written.
 */
export async function withMarkRules(
  sheet: SheetText,
  rules: readonly MarkRule[],
  isOurs: (formula: string) => boolean,
  formatOf: (rule: MarkRule) => Promise<number>,
): Promise<SheetText> {
  const { tail, prefix } = sheet;
  const there = rulesThere(tail);
  const ours = there.filter(({ formula }) => isOurs(formula));
  const wanted = rules.map(({ formula, blocks }) => `${formula} ${cellsOf(blocks)}`).sort();
  const standing = ours
    .map(({ formula, cells }) => `${formula} ${cellsOf(blocksOf(cells))}`)
    .sort();
  if (wanted.join("\n") === standing.join("\n")) return sheet;
  let changed = without(tail, emptied(ours, there));
  const priorities = rulesThere(changed).map(({ rule }) => Number(rule.attributes.priority) || 0);
  let priority = Math.max(0, ...priorities);
  for (const rule of rules) {
    const format = await formatOf(rule);
    priority++;
    changed = withElement(
      changed,
      "conditionalFormatting",
      `<${prefix}conditionalFormatting sqref="${cellsOf(rule.blocks)}">` +
        `<${prefix}cfRule type="expression" dxfId="${format}" priority="${priority}">` +
        `<${prefix}formula>${escaped(rule.formula)}</${prefix}formula>` +
        `</${prefix}cfRule></${prefix}conditionalFormatting>`,
    );
  }
  return { ...sheet, tail: changed };
}

function rulesThere(xml: string): RuleThere[] {
  return childElements(xml)
    .filter(({ name }) => name === "conditionalFormatting")
    .flatMap((group) =>
      childrenOf(xml, group)
        .filter(({ name }) => name === "cfRule")
        .map((rule) => {
          const formula = childrenOf(xml, rule).find(({ name }) => name === "formula");
          return {
            rule,
            group,
            formula: formula ? textIn(xml, formula) : "",
            cells: group.attributes.sqref ?? "",
          };
        }),
    );
}

/** Our rules, or the whole group where all of its rules are ours. */
function emptied(ours: readonly RuleThere[], there: readonly RuleThere[]): Element[] {
  const stretches = ours.map(({ rule, group }) => {
    const others = there.filter((each) => each.group.start === group.start);
    const all = others.every((each) => ours.includes(each));
    return all ? group : rule;
  });
  return [...new Map(stretches.map((each) => [each.start, each])).values()];
}

function cellsOf(blocks: readonly CellBlock[]): string {
  return blocks.map(blockReference).sort().join(" ");
}
