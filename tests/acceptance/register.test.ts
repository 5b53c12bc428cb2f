import { registerState } from "../../src/acceptance/register";
import { REGISTER, REGISTER_STATES } from "../check-values/decisions";

test.each(REGISTER_STATES)("%s on day %s, every %s months: %s %s (%s)", (...row) => {
  const [id, day, months, state, days] = row;
  expect(registerState(id, day, REGISTER, months)).toEqual(
    days === undefined ? { state } : { state, days },
  );
});

test("a line's own interval goes before that of the register", () => {
  const register = [{ id: "B-7", checked: 45700, interval: 3 }];
  expect(registerState("B-7", 45800, register, 12)).toEqual({ state: "overdue", days: 11 });
});

test.each([0, 1.5, -12])("an interval of %s months cannot be", (months) => {
  expect(registerState("M-1", 46100, REGISTER, months)).toMatchObject({ id: "interval-not-whole" });
});
