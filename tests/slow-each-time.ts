/**
 * Whether a call takes more of the processor than it may, each of three times.
 *
 * What the process does beside it (collecting garbage, compiling what ran often) counts as its time too; so
 * one that is slow once has proved nothing.
 *
 * @param most milliseconds of the processor
 */
export function slowEachTime(run: () => void, most: number): boolean {
  for (let tries = 0; tries < 3; tries++) {
    const before = process.cpuUsage();
    run();
    if (process.cpuUsage(before).user <= most * 1000) return false;
  }
  return true;
}
