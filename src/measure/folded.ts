/** Lower case without accents, superscripts as plain figures: how words of cells and headers are compared. */
export function folded(text: string): string {
  return text
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/œ/g, "oe")
    .normalize("NFKD")
    .replace(/\p{M}/gu, "");
}
