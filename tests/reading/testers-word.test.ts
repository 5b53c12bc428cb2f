import { saidOfTest, testersWordIn } from "../../src/reading/testers-word";

/* Remarks as testers write them, all invented, with what a careful reader makes of them. */

test.each([
  ...["VOID", "Void.", "VOID!!", "*VOID*", "void – foam", "leak at clamp, test void"],
  ...["void, see 110", "VOID - replaces S-3", "nulo, ver 110"],
  ...["test was void due to foam", "void: did not settle after 6 min", "VOID – repeated as S-4"],
  ...["not a valid test", "invalid - no alcohol", "Disregard this test", "test rejected"],
  ...["resultado nulo", "prueba no válida", "annulée", "essai non valable", "résultat à écarter"],
  ...["Prüfung verworfen", "nicht gültig", "nicht verwertbar"],
])("“%s” says that the test is void", (remark) => {
  expect(saidOfTest(remark, "Remarks")).toBe("void");
});

test.each([
  ...["test void?", "repeat if void", "S-3 void", "see S-3 (void)", "repeat of void test S-3"],
  ...["retest, first test void", "discarded after test", "sample discarded", "load rejected"],
  ...["voided ticket", "invalid id on ticket", "do not use", "thrown out"],
])("“%s” may say it", (remark) => {
  expect(saidOfTest(remark, "Remarks")).toBe("may be void");
});

test.each([
  ...["", "light rain", "no voids", "voids in cylinder", "void ratio 0.4", "avoided", "not void"],
  ...["valid test", "V", "nullmessung", "kein Regen"],
])("“%s” does not say it", (remark) => {
  expect(saidOfTest(remark, "Remarks")).toBeUndefined();
});

test.each([
  ["Void?", "yes", "void"],
  ["Test void (Y/N)", "Y", "void"],
  ["Void", 0, undefined],
  ["Void", "no", undefined],
  ["Valid?", "No", "void"],
  ["Valid?", "yes", undefined],
  ["Valid?", "VOID", "void"],
  ["Voids (%)", 4, undefined],
  ["Status", "V", "may be void"],
  ["Remarks", null, undefined],
])("below “%s”, %j: %s", (header, cell, says) => {
  expect(testersWordIn(header)(cell)?.says).toBe(says);
});
