import { exact, roundToStep } from "../../measure/rounding";
import { REPORTING_STEP } from "../../methods/volumetric-air/corrected-air";
import { reportedFrom, unrounded, type Slip } from "./slip";

/** Steps to which people round instead, % air. */
const OTHER_STEPS = [0.5, 0.1, 1, 0.05, 0.01];

/** Rounded to a tenth, a half or a whole percent, rounded upward at a half, or not rounded at all. */
export const roundedToOtherStep: Slip = {
  id: "rounded-to-other-step",
  gives(row) {
    const result = unrounded(row);
    const values = { unrounded: result };
    const rounded = OTHER_STEPS.flatMap((step) =>
      [roundToStep(result, step), halfUp(result, step)].map((air) => {
        return { air, values: { ...values, step } };
      }),
    );
    return [
      { air: halfUp(result, REPORTING_STEP), say: "half-rounded-up", values },
      { air: result, say: "left-unrounded", values },
      ...rounded,
    ];
  },
};

/** Two neighbouring digits of the right result in the wrong order: 5.75 as 7.55 or 5.57. */
export const digitsSwapped: Slip = {
  id: "digits-swapped",
  gives(row) {
    const air = reportedFrom(row);
    const written = new Set([air.toFixed(2), String(air)]);
    return [...written].flatMap(swaps).map((swapped) => ({ air: swapped, values: { air } }));
  },
};

function swaps(written: string): number[] {
  const point = written.indexOf(".");
  const digits = written.replace(".", "");
  return [...digits].slice(1).map((_, i) => {
    const [before, after] = [digits[i]!, digits[i + 1]!];
    const swapped = digits.slice(0, i) + after + before + digits.slice(i + 2);
    return Number(point < 0 ? swapped : `${swapped.slice(0, point)}.${swapped.slice(point)}`);
  });
}

function halfUp(value: number, step: number): number {
  return exact(Math.floor(exact(value / step) + 0.5) * step);
}
