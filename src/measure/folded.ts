const PLAIN = /^[ -~]*$/;

/** Lower case without accents, superscripts as plain figures: how words of cells and headers are compared. */
export function folded(text: string): string {
  const lower = text.toLowerCase();
  // Most texts have plain letters only, and long columns of them are compared.
  if (PLAIN.test(lower)) return lower;
  return lower.replace(/ß/g, "ss").replace(/œ/g, "oe").normalize("NFKD").replace(/\p{M}/gu, "");
}
