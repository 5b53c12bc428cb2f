/*
 * Calls every worksheet function with hostile arguments: npm run fuzz -- [calls] [seed] [function].
 * Prints the seed, the share of calls that gave a value, and each broken promise with the seed of its call.
 */
import { fuzz } from "../tests/fuzz/fuzz";
import { hostileCall, TARGETS } from "../tests/fuzz/hostile-call";
import { Random } from "../tests/simulation/random";

const [calls = "1000000", seed = String(Date.now() % 1_000_000), only] = process.argv.slice(2);
console.log(`seed ${seed}, ${calls} calls a function`);
for (const target of TARGETS.filter(({ id }) => only === undefined || id === only)) {
  const { valued, broken } = fuzz(target, Number(calls), Number(seed));
  console.log(`${(valued * 100).toFixed(0).padStart(4)} % with a value  ${target.id}`);
  for (const { what, seed: own, calls: times } of broken) {
    const given = JSON.stringify(hostileCall(target, new Random(own))).slice(0, 300);
    console.log(`     ${times} calls: ${what}\n     call ${own}: ${given}`);
    process.exitCode = 1;
  }
}
