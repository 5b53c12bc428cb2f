import { readFileSync } from "node:fs";

/*
 * Which requirement set brings a member, read from the notes in Microsoft's own type declarations
 * (@types/office-js): "[Api set: ExcelApi 1.9]" stands before each member.
 */

const DECLARATIONS = require.resolve("@types/office-js/index.d.ts");
const NAMESPACE = /^declare namespace Excel \{/;
const CLASS = /^ {4}class (\w+)/;
const MEMBER = /^ {8}(?:readonly )?(\w+)\??[(:]/;
const SET = /\[Api set: (\w+) (\d+)\.(\d+)/;

/** Sets by class and member. */
type Sets = Map<string, Map<string, number>>;

let table: Sets | undefined;

/**
 * The minor version of ExcelApi that brings a member, such as 18 for `Worksheet.notes`; `Infinity` for a
 * member that is in no released set.
 */
export function setOf(className: string, member: string): number {
  table ??= readTable();
  const set = table.get(className)?.get(member);
  if (set === undefined) throw new Error(`${className}.${member} is not a member of Excel's API`);
  return set;
}

function readTable(): Sets {
  const sets: Sets = new Map();
  const lines = readFileSync(DECLARATIONS, "utf8").split("\n");
  let className = "";
  let set = Infinity;
  for (let i = lines.findIndex((line) => NAMESPACE.test(line)) + 1; i < lines.length; i += 1) {
    const line = lines[i] ?? "";
    if (line.startsWith("}")) break;
    const found = SET.exec(line);
    if (found) set = found[1] === "ExcelApi" ? Number(found[3]) : Infinity;
    if (line.startsWith("    }")) className = "";
    className = CLASS.exec(line)?.[1] ?? className;
    const member = className && MEMBER.exec(line)?.[1];
    if (!member) continue;
    const ofClass = sets.get(className) ?? new Map<string, number>();
    sets.set(className, ofClass);
    // Overloads of one member carry the same set.
    ofClass.set(member, Math.min(set, ofClass.get(member) ?? set));
  }
  return sets;
}
