import { RULES } from "../../src/fieldsheet/rules";
import { ruleMessages } from "../../src/messages/english/rules";

/*
 * What each rule is: how heavy it is, which columns it needs, and whether it looks at a test of another
 * method, kept by hand. Weights are our own: what makes a test worthless voids it, what makes its number wrong or
 * unreadable is an error, what calls for a look is a doubt, what explains is a note.
 *
 * In a line: id; weight; columns needed, "a|b" for one of them at least; "any method".
 */
const KEPT = `
wrong-method-for-aggregate; void; method aggregate; any method
called-void; void
leak; void; leak
alcohol-added-late; void; lateAlcohol
foam-over-limit; void; foam
slow-to-settle; void; settle
readings-disagree; void; first second third
packed-concrete-left; void; packed

may-be-called-void; error
not-a-number; error; ; any method
cannot-be-read; error; ; any method
negative-value; error; ; any method
beyond-scale; error
reading-as-share; error
cups-not-whole; error; cups
reading-missing; error; first|second|third|final
readings-not-in-sheet; error; air
second-reading-missing; error; second
third-reading-missing; error; first second
alcohol-missing; error; alcohol
alcohol-unit-missing; error; alcohol; any method
alcohol-beyond-table; error; alcohol
air-below-zero; error; alcohol
air-beyond-most; error; cups
times-out-of-order; error; sampledFrom|sampledTo|start; any method
final-reading-wrong; error; first second final
reported-air-wrong; error; air
void-test-reported; error; air
limits-crossed; error
slip-in-column; error; air

off-grid-reading; doubt
cups-not-needed; doubt; cups
alcohol-over-capacity; doubt; alcohol
other-alcohol-strength; doubt; alcoholStrength
little-water; doubt; water
short-inversion; doubt; inversion
long-inversion; doubt; longestInversion
short-roll; doubt; roll
wet-sieving-due; doubt; aggregateSize
stale-sample; doubt; sampledTo sampledFrom|start; any method
moulded-late; doubt; sampledTo moulded; any method
sampled-from-an-end; doubt; loadShare; any method
initial-curing; doubt; curingLow|curingHigh; any method
too-few-cylinders; doubt; cylinders; any method
cylinders-apart; doubt; firstCylinder secondCylinder; any method
water-added-wrongly; doubt; waterAdditions|revolutionsAfterWater; any method
water-cement-over-limit; doubt; batchWater cementitious waterCementLimit|exposureClass; any method
outside-specification; doubt
reported-outside; doubt; air
density-outside-specification; doubt; density densityTarget|densityLow|densityHigh; any method
slump-outside-tolerance; doubt; slump nominalSlump|slumpLow|slumpHigh; any method
unit-does-not-fit; doubt; slump|concreteTemperature|airTemperature|density|densityTarget; any method
concrete-temperature; doubt; concreteTemperature; any method
measure-too-small; doubt; measureVolume aggregateSize; any method
pressure-check-due; doubt; method aggregateFactor; any method
methods-disagree; doubt; gravimetricAir|density
void-without-repeat; doubt; sample|load
repeat-without-more-alcohol; doubt; alcohol sample|load
check-test-due; doubt; sample|load|checkOf
check-test-failed; doubt; sample|load|checkOf
duplicate-test; doubt; sample|load
meter-check-overdue; doubt; date meterCheck
meter-found-out; doubt; date meterCheck meterFault
bowl-too-small; doubt; bowlVolume
cup-out-of-tolerance; doubt; cupVolume bowlVolume
alcohol-not-in-sheet; doubt; first|second|third|final
agreement-not-recorded; doubt

limits-in-some-rows; note; low|high|target|tolerance
cylinders-apart-on-average; note; firstCylinder secondCylinder
density-and-air; note; density densityTarget target|low|high
decided-all-the-same; note; first second
near-limit; note
pressure-check-may-be-due; note; method slump; any method
interpolated-correction; note; alcohol
evaporation-high; note; concreteTemperature airTemperature humidity wind; any method
discharged-late; note; discharged|revolutions; any method
other-method; note; method; any method
places-of-sampling; note; samplingPlace
`;

/** Rules that go first, where two would speak of one cell. */
const YIELDS_TO: Readonly<Record<string, readonly string[]>> = {
  "cannot-be-read": ["not-a-number", "alcohol-unit-missing"],
  "off-grid-reading": ["beyond-scale", "negative-value", "reading-as-share", "final-reading-wrong"],
};

/** Rules whose remark on the sheet is of every test in it. */
const OF_EVERY_TEST = ["readings-not-in-sheet", "alcohol-not-in-sheet", "agreement-not-recorded"];

const kept = KEPT.trim()
  .split(/\n+/)
  .map((line) => line.split(";").map((part) => part.trim()));

test("no rule is missing here, and none is gone", () => {
  expect(RULES.map(({ id }) => id).sort()).toEqual(kept.map(([id]) => id).sort());
});

test.each(kept)("%s: %s", (id, weight, needed = "", method = "") => {
  const rule = RULES.find((each) => each.id === id)!;
  const needs = [...rule.needs, ...(rule.needsOneOf ? [rule.needsOneOf.join("|")] : [])].join(" ");
  const anyMethod = "anyMethod" in rule && rule.anyMethod;
  expect([rule.weight, needs, anyMethod ? "any method" : ""]).toEqual([weight, needed, method]);
  expect(rule.yieldsTo).toEqual(YIELDS_TO[id!]);
  expect("touchesEveryTest" in rule && rule.touchesEveryTest).toBe(OF_EVERY_TEST.includes(id!));
});

test("what only a rule says is declared by one, and every rule declares something", () => {
  const declared = new Set<string>(RULES.flatMap(({ says }) => says));
  expect(RULES.filter(({ says }) => says.length === 0).map(({ id }) => id)).toEqual([]);
  expect(Object.keys(ruleMessages).filter((id) => !declared.has(id))).toEqual([]);
});
