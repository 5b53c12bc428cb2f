import fc from "fast-check";
import { settledMinute } from "../../../src/methods/volumetric-air/settled-level";

const RULE =
  "derived from: no more than 0.25 % change within 2 min, 6 min at most (a meter maker's manual, 2019)";
const series = (pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([minute, level]) => ({ minute, level }));

const SETTLED: [[number, number][], number, string][] = [
  [
    [
      [0, 6],
      [1, 6],
      [2, 6],
    ],
    2,
    RULE,
  ],
  [
    [
      [1, 7],
      [2, 6],
      [3, 5.5],
      [4, 5.5],
      [5, 5.25],
    ],
    5,
    `${RULE}; from minute 3 on within 0.25`,
  ],
  [
    [
      [0, 6],
      [2, 6.25],
    ],
    2,
    `${RULE}; exactly 0.25 is steady`,
  ],
  [
    [
      [0, 6],
      [1, 6.5],
      [2, 6],
      [3, 6],
      [4, 6],
    ],
    4,
    `${RULE}; the jump at minute 1 breaks the first two minutes`,
  ],
  [
    [
      [0, 8],
      [4, 6],
      [6, 6],
    ],
    6,
    `${RULE}; minute 6 is still in time`,
  ],
  [
    [
      [0.5, 6],
      [2.5, 6],
    ],
    2.5,
    RULE,
  ],
];

test.each(SETTLED)("%j settles at minute %s (%s)", (pairs, minute) => {
  expect(settledMinute(series(pairs))).toBe(minute);
});

test.each([
  [
    [
      [0, 9],
      [2, 8],
      [4, 7],
      [6, 6],
    ],
    "level-not-settled",
  ],
  [
    [
      [0, 9],
      [5, 6],
      [7, 6],
    ],
    "level-not-settled",
  ],
  [
    [
      [0, 6],
      [1, 6],
    ],
    "level-not-yet-known",
  ],
  [[], "level-not-yet-known"],
  [
    [
      [2, 6],
      [1, 6],
    ],
    "minutes-out-of-order",
  ],
  [
    [
      [-1, 6],
      [1, 6],
    ],
    "minutes-negative",
  ],
] as const)("%j is refused with %s", (pairs, id) => {
  expect(settledMinute(series(pairs))).toMatchObject({ id });
});

test("a level that never changes settles two minutes after the first record", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 4 }),
      fc.integer({ min: 0, max: 36 }),
      (start, quarters) => {
        const levels = [0, 1, 2].map((step) => ({ minute: start + step, level: quarters / 4 }));
        expect(settledMinute(levels)).toBe(start + 2);
      },
    ),
  );
});
