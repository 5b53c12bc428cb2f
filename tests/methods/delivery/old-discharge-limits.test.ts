import {
  oldDischargeLimits,
  type DischargeLimits,
} from "../../../src/methods/delivery/old-discharge-limits";

test.each<[string, DischargeLimits, string]>([
  ["ASTM C94-98", { minutes: 90, revolutions: 300 }, "old text, trade news"],
  ["C94/C94M-12", { minutes: 90, revolutions: 300 }, "300 left in 2013, trade news"],
  ["C94/C94M-13", { minutes: 90 }, "300 left in 2013, trade news"],
  ["C94-17a", { minutes: 90 }, "C94-17a 6.1.9 has no number, trade news"],
  ["C94/C94M-21", {}, "no time by default any more, trade news"],
  ["C94-2024", {}, "no time by default any more, trade news"],
  ["ASTM C94", {}, "no edition is named"],
  // The same editions, as people write them.
  ["astm c 94 - 98", { minutes: 90, revolutions: 300 }, "old text, trade news"],
  ["C-94–98", { minutes: 90, revolutions: 300 }, "old text, trade news"],
  ["C94: 1998", { minutes: 90, revolutions: 300 }, "old text, trade news"],
  ["C94 / C94 M - 12", { minutes: 90, revolutions: 300 }, "300 left in 2013, trade news"],
  ["C94/C 94M-12", { minutes: 90, revolutions: 300 }, "300 left in 2013, trade news"],
  ["C94/94M-12", { minutes: 90, revolutions: 300 }, "300 left in 2013, trade news"],
  ["C94-33", { minutes: 90, revolutions: 300 }, "the first edition is of 1933"],
  ["C94-32", {}, "no edition of 1932, so of 2032"],
  ["C94-1933", { minutes: 90, revolutions: 300 }, "the first edition is of 1933"],
  ["C94-5", {}, "no year"],
  ["C94-123", {}, "no year"],
  ["EN 206", {}, "another standard"],
  ["", {}, "nothing is named"],
])("%s: %j (%s)", (text, limits) => {
  expect(oldDischargeLimits(text)).toEqual(limits);
});
