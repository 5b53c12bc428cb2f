import { registerState, type Registered } from "../acceptance/register";
import { registerWords } from "../acceptance/register-words";
import { isBlank, type CellValue } from "../measure/cell-value";
import { dateFromCell } from "../measure/date";
import { at, isIssue, issue, type Issue } from "../measure/issue";
import { numberFromCell } from "../measure/number-from-cell";
import { textFromCell } from "../measure/words-from-cell";
import { say } from "../messages/catalogue";
import { number, setting, text, type Argument } from "./runner/argument";
import { cellByCell } from "./runner/cell-by-cell";
import { orThrow } from "./runner/cell-error";
import { CellTable } from "./runner/cell-table";

const day: Argument<number> = {
  name: "date",
  optional: false,
  setting: false,
  read: dateFromCell,
};

/**
 * How a meter, cup, scale or certificate stood on a day, by the last check before it: "current", "due in n days", "overdue by n days" or "unknown". Due is said from 30 days before.
 * @customfunction REGISTER.STATE REGISTER.STATE
 * @param id Its number, as the register has it.
 * @param date Day of the test.
 * @param register Two columns: id and day of the check; or three, with the months until the next. An id may stand in it more than once.
 * @param [interval] Months between two checks, where the register does not say it: 12 unless given.
 * @returns How it stood, as a text.
 * @example =FRESH.REGISTER.STATE("M-1", 46100, {"M-1",46000}) gives "current" [checked on 9 December 2025, a year]
 * @example =FRESH.REGISTER.STATE("M-1", 46340, {"M-1",46000}, 12) gives "due in 25 days" [a year after day 46000 is day 46365]
 * @example =FRESH.REGISTER.STATE("B-7", 45800, {"B-7",45700,3}) gives "overdue by 11 days" [three months after 12 February 2025 is day 45789]
 */
export function registerStateOf(
  id: any[][],
  date: any[][],
  register: any[][],
  interval?: any[][],
): any[][] {
  const lines = orThrow(at("register", registerFrom(new CellTable(register))));
  return cellByCell([text("id"), day, setting(number("interval"))], (name, on, months) => {
    const found = registerState(name, on, lines, months);
    if (isIssue(found)) return at("interval", found);
    return registerWords(found);
  })(id, date, interval);
}

function registerFrom(table: CellTable): Registered[] | Issue {
  const wrong = table.tooLong();
  if (wrong) return wrong;
  if (table.columns < 2 || table.columns > 3) {
    return issue("register-columns", { columns: table.columns });
  }
  const lines: Registered[] = [];
  for (const [i, row] of table.values().entries()) {
    if (row.every(isBlank)) continue;
    const line = at(say("register-row", { row: i + 1 }), lineFrom(row));
    if (isIssue(line)) return line;
    lines.push(line);
  }
  return lines.length > 0 ? lines : issue("register-blank");
}

function lineFrom([id, checked, interval]: readonly CellValue[]): Registered | Issue {
  const name = textFromCell(id!) ?? issue("argument-missing");
  if (isIssue(name)) return name;
  const on = dateFromCell(checked!) ?? issue("argument-missing");
  if (isIssue(on)) return on;
  const months = numberFromCell(interval ?? null);
  return isIssue(months) ? months : { id: name, checked: on, interval: months };
}
