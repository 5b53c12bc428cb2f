/** What a function is given, what comes out as it is printed, and where that comes from. */
export type Worked = readonly [given: readonly unknown[], printed: string, source: string];

/** Half a unit in the last printed place: as near as a printed number can be checked. */
export function halfOfLastPlace(printed: string): number {
  const places = printed.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** -places * (1 + 1e-9);
}

/** Holds a result to a number as it is printed. */
export function expectAsPrinted(result: unknown, printed: string): void {
  expect(typeof result).toBe("number");
  expect(Math.abs((result as number) - Number(printed))).toBeLessThanOrEqual(
    halfOfLastPlace(printed),
  );
}
