/** Headers of a usual sheet of volumetric tests. */
export const HEADERS = [
  ...["Sample", "Date", "Mix", "First reading", "Second reading", "Third reading"],
  ...["Cups", "Alcohol (oz)", "Foam", "Air", "Low", "High"],
];

/** So many sound tests below them; one in fifty foams too much, as on a real sheet, where asked for. */
export function rowsOf(count: number, withVoid = false): (string | number | null)[][] {
  return Array.from({ length: count }, (_, i) => {
    const reading = 5.5 + (i % 5) / 4;
    const day = 46_000 + Math.floor(i / 20);
    const foam = withVoid && i % 50 === 0 ? 3 : 1;
    return [`S-${i}`, day, "A-4000", reading, reading, null, 0, 48, foam, reading - 0.25, 4.5, 7.5];
  });
}
