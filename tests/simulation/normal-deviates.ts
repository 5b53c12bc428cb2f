import { Random } from "./random";

/** Numbers from a standard normal distribution, the same in every run (Box and Muller 1958). */
export function normalDeviates(seed: number): () => number {
  const random = new Random(seed);
  return () => {
    const radius = Math.sqrt(-2 * Math.log(1 - random.next()));
    return radius * Math.cos(2 * Math.PI * random.next());
  };
}
