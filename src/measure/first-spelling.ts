/**
 * Gives a name as it was first written, so that "LW4", "lw4" and "LW4 " are one; "" for none. Each call of
 * it begins anew.
 */
export function firstSpelling(): (name?: string) => string {
  const known = new Map<string, string>();
  return (name = "") => {
    const written = name.trim().replace(/\s+/g, " ");
    const folded = written.toLowerCase();
    if (!known.has(folded)) known.set(folded, written);
    return known.get(folded)!;
  };
}
