import fc from "fast-check";
import { correctedAir } from "../../../src/methods/volumetric-air/corrected-air";
import { CORRECTION_ROWS, WORKED_TESTS } from "../../check-values/volumetric-air";
import { resultOf } from "../../check-values/result-of";

const results = WORKED_TESTS.filter(({ air }) => typeof air === "number");

test.each(results)(
  "$name gives $unrounded, reported $air ($source)",
  ({ readings, cups, pints, unrounded, air }) => {
    const alcohol = pints === undefined ? undefined : { amount: pints, unit: "pt" as const };
    const result = resultOf(correctedAir({ reading: readings.at(-1)!, cups, alcohol }));
    expect(result).toMatchObject({ unrounded, air });
  },
);

test.each([
  [{ reading: -0.25 }, "reading-negative"],
  [{ reading: 9.25 }, "reading-beyond-scale"],
  [{ reading: 10.25, scaleEnd: 10 }, "reading-beyond-scale"],
  [{ reading: 0.0575 }, "reading-as-share"],
  [{ reading: 0.059 }, "reading-as-share"],
  [{ reading: 6, cups: 25 }, "air-beyond-most"],
  [{ reading: 5, cups: 1.5 }, "cups-not-whole-number"],
  [{ reading: 5, cups: -1 }, "cups-negative"],
  [{ reading: 5, alcohol: { amount: 6, unit: "pt" as const } }, "alcohol-beyond-table"],
  [{ reading: 0.25, alcohol: { amount: 5, unit: "pt" as const } }, "air-below-zero"],
])("%j is refused with %s", (inputs, id) => {
  expect(correctedAir(inputs)).toMatchObject({ id });
});

test.each([
  [0.1, 6, "derived: 5.95 lies half-way; 6.0 is 60 tenths, even"],
  [0.5, 6, "derived: 5.95 lies nearest to 6.0"],
  [0, 5.95, "0 leaves the result as it is"],
])("a step of %s reports 5.95 as %s (%s)", (step, reported) => {
  const inputs = { reading: 6.25, alcohol: { amount: 48, unit: "oz" as const } };
  expect(resultOf(correctedAir(inputs, step)).air).toBe(reported);
});

test.each([
  [{ reading: 5.9 }, 5.9, 6],
  [{ reading: 5.9, alcohol: { amount: 48, unit: "oz" as const } }, 5.6, 5.5],
  [{ reading: 0.1 }, 0.1, 0],
  [{ reading: 9.5, scaleEnd: 10 }, 9.5, 9.5],
  [{ reading: 6, cups: 24 }, 30, 30],
])(
  "%j is computed as it is written: %s, reported %s (derived by hand)",
  (inputs, unrounded, air) => {
    expect(resultOf(correctedAir(inputs))).toMatchObject({ unrounded, air });
  },
);

test("agrees with hundredths kept as integers, for every reading, cup and row of the table", () => {
  // Plain integer arithmetic, written from the method's text and not from the code.
  const rows = CORRECTION_ROWS.map(
    ([, oz, , subtract]) => [oz, Math.round(subtract * 100)] as const,
  );
  fc.assert(
    fc.property(
      fc.integer({ min: 4, max: 36 }),
      fc.integer({ min: 0, max: 5 }),
      fc.constantFrom(...rows),
      (quarters, cups, [amount, hundredths]) => {
        const exact = quarters * 25 - hundredths + cups * 100;
        const below = Math.floor(exact / 25);
        const rest = exact - below * 25; // never 12.5: no row of the table makes a tie
        const expected = (rest > 12 ? below + 1 : below) / 4;
        const inputs = { reading: quarters / 4, cups, alcohol: { amount, unit: "oz" as const } };
        expect(resultOf(correctedAir(inputs)).air).toBe(expected);
      },
    ),
  );
});

test("one cup more is exactly one percent more air", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 36 }),
      fc.integer({ min: 0, max: 8 }),
      (quarters, cups) => {
        const reading = quarters / 4;
        expect(resultOf(correctedAir({ reading, cups: cups + 1 })).air).toBe(
          resultOf(correctedAir({ reading, cups })).air + 1,
        );
      },
    ),
  );
});
