/** Expects plain data to be equal. Most of the many thousand comparisons are settled as text, which is faster. */
export function expectSame(received: unknown, expected: unknown): void {
  if (JSON.stringify(received) === JSON.stringify(expected)) return;
  expect(received).toEqual(expected);
}
