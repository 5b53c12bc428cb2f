/** Where the items of a list lie when each has its own height. */
export interface ItemHeights {
  readonly count: number;
  /** Distance of an item from the start of the list, px; the whole height for `count`. */
  topOf(index: number): number;
  /** The item that lies at a distance from the start; the first or last one beyond the ends. */
  indexAt(distance: number): number;
  /** Takes measured heights over. */
  measured(heights: ReadonlyMap<number, number>): void;
}

/**
 * @param count Number of items.
 * @param guess Height of an item until it is measured, px.
 */
export function itemHeights(count: number, guess: number): ItemHeights {
  const heights = new Float64Array(count).fill(guess);
  const tops = new Float64Array(count + 1);
  const layOut = (from: number) => {
    for (let i = from; i < count; i++) tops[i + 1] = tops[i]! + heights[i]!;
  };
  layOut(0);
  return {
    count,
    topOf: (index) => tops[index]!,
    indexAt(distance) {
      let [low, high] = [0, Math.max(0, count - 1)];
      while (low < high) {
        const middle = Math.ceil((low + high) / 2);
        if (tops[middle]! <= distance) low = middle;
        else high = middle - 1;
      }
      return low;
    },
    measured(found) {
      for (const [index, height] of found) heights[index] = height;
      layOut(Math.min(count, ...found.keys()));
    },
  };
}
