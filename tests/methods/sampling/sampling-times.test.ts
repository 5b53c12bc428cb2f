import { initialCuring, NARROW_FROM } from "../../../src/methods/sampling/initial-curing";
import {
  MIDDLE_OF_LOAD,
  minutesBetween,
  MOULD_WITHIN,
  SAMPLING_WITHIN,
  START_WITHIN,
} from "../../../src/methods/sampling/sampling-times";

const at = (hours: number, minutes: number) => hours * 60 + minutes;

// Counted by hand on a clock.
test.each([
  [at(9, 0), at(9, 5), 5],
  [at(9, 5), at(9, 0), -5],
  [at(23, 58), at(0, 3), 5],
  [at(0, 3), at(23, 58), -5],
  [at(7, 30), at(7, 30), 0],
  [at(1, 0), at(13, 0), 720],
  [at(13, 0), at(1, 0), 720],
  [at(1, 0), at(13, 1), -719],
  [at(1, 0), at(12, 59), 719],
  [at(24, 0) + 10, at(0, 20), 10],
])("from minute %d to minute %d there are %d, the shorter way round", (from, to, minutes) => {
  expect(minutesBetween(from, to)).toBe(minutes);
});

test("the times of sampling are those of ASTM C172 and C31 (published by departments of transport)", () => {
  expect([SAMPLING_WITHIN, START_WITHIN, MOULD_WITHIN]).toEqual([15, 5, 15]);
  expect(MIDDLE_OF_LOAD).toEqual({ from: 10, to: 90 });
});

// ASTM C31 as a code body's question and answer and an exam page quote it.
test.each([
  [false, "us", 60, 80],
  [false, "si", 16, 27],
  [true, "us", 68, 78],
  [true, "si", 20, 26],
] as const)("initial curing, high strength %s, %s: %d to %d", (highStrength, system, low, high) => {
  expect(initialCuring(highStrength, system)).toEqual({ low, high });
});

test("high strength begins at 6000 psi and 40 MPa (a forum that quotes ASTM C31)", () => {
  expect(NARROW_FROM).toEqual({ us: 6000, si: 40 });
});
