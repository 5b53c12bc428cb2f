import { field } from "./field";

/** What the volumetric test itself gives. */
export const AIR_TEST_FIELDS = {
  first: field(
    "number",
    "first reading",
    `first reading, initial reading, reading 1, 1st reading, first meter reading,
      initial meter reading, r1, reading one, first, initial, 1st, reading a`,
  ),
  second: field(
    "number",
    "second reading",
    `second reading, reading 2, 2nd reading, second meter reading, confirming reading,
      confirmation reading, confirmation, r2, reading two, second, 2nd, reading b`,
  ),
  third: field(
    "number",
    "third reading",
    `third reading, reading 3, 3rd reading, third meter reading, r3, reading three, third, 3rd,
      reading c`,
  ),
  final: field(
    "number",
    "final reading",
    `final reading, final meter reading, meter reading, reading, final, neck reading`,
  ),
  cups: field(
    "number",
    "calibrated cups",
    `cups, calibrated cups, cups of water, water cups, cal cups, cups added, no of cups,
      number of cups, cups water`,
  ),
  alcohol: field(
    "alcohol",
    "alcohol",
    `alcohol, alc, ipa, isopropyl, isopropyl alcohol, alcohol added, alcohol used, alcohol amount,
      amount of alcohol, alcohol volume, volume of alcohol, alcohol vol, ipa added`,
  ),
  alcoholUnit: field(
    "text",
    "alcohol unit",
    `alcohol unit, unit of alcohol, ipa unit, alcohol units`,
  ),
  foam: field("number", "foam", `foam, foam divisions, foam on neck, foam height, foam layer`),
  settle: field(
    "minutes",
    "time to settle",
    `time to settle, settling time, settle, settle time, time to stable, time to stabilize,
      time to stabilise, minutes to settle, min to settle, minutes to stable, stable after,
      settled after, time to stable level, stabilization time, stabilisation time`,
  ),
  packed: field(
    "yes-no",
    "packed concrete left",
    `packed concrete left, packed concrete, packed, undisturbed concrete, undisturbed,
      undispersed concrete, concrete left in bowl, concrete left, concrete stuck in bowl,
      concrete stuck`,
  ),
  leak: field(
    "yes-no",
    "leak",
    `leak, leaks, leaked, leakage, leaking, meter leaked, leak found, any leak`,
  ),
  air: field(
    "number",
    "reported air",
    `reported air, air reported, air, air content, reported air content, air result,
      corrected air, final air, final air content, plastic air, vol air, result`,
  ),
} as const;
