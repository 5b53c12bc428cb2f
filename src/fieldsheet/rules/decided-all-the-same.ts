import { airBounds } from "../../acceptance/air-bounds";
import { isIssue } from "../../measure/issue";
import { phrase } from "../../messages/catalogue";
import { testRule } from "../rule";

/** A test whose record is not whole, and whose load is decided whatever is missing. */
export const decidedAllTheSame = testRule({
  id: "decided-all-the-same",
  weight: "note",
  needs: ["first", "second"],
  says: ["decided-all-the-same"],
  basis:
    "A missing amount of alcohol takes 0 to 0.9 % off, a missing second reading that agrees lies within 0.25 % of the first (derived from ASTM C173 Table 1 and procedure). Where all of that gives one verdict, the load is decided; the record stays wrong.",
  look({ state, readings, limits, unreadable, values, testersWord, record }, sheet) {
    if (state !== "incomplete" || Object.keys(unreadable).length > 0) return undefined;
    // What may be void has no air, and cups that are told elsewhere no bound.
    const mayBeOther = sheet.unread.some(
      ({ decides, mayBe, asks, touches }) =>
        decides && touches(record) && (asks || mayBe.some((field) => field !== "alcohol")),
    );
    if (testersWord || mayBeOther) return undefined;
    const { first, second, third, cups, alcohol } = values;
    const final = readings?.next === "final" ? readings.reading : undefined;
    const onlyFirst = first !== undefined && second === undefined && third === undefined;
    const reading = final ?? (onlyFirst ? first : undefined);
    if (reading === undefined) return undefined;
    const bounds = airBounds(
      {
        reading,
        final: final !== undefined,
        cups: sheet.has("cups") ? (cups ?? 0) : 0,
        alcohol: sheet.has("alcohol") ? alcohol : undefined,
      },
      limits,
    );
    if (isIssue(bounds) || !bounds.verdict || bounds.most === undefined) return undefined;
    const { least, most } = bounds;
    const verdict = phrase(`decided-${bounds.verdict}`);
    return { field: null, values: { least, most, verdict } };
  },
});
