import { field } from "./field";

/** What the specification asks of the air. */
export const AIR_LIMIT_FIELDS = {
  low: field(
    "number",
    "low limit",
    `low, low limit, lower limit, air low, minimum air, min air, air min, min, minimum, spec low,
      spec min, specification low, lower spec limit, lower`,
  ),
  high: field(
    "number",
    "high limit",
    `high, high limit, upper limit, air high, maximum air, max air, air max, max, maximum,
      spec high, spec max, specification high, upper spec limit, upper`,
  ),
  target: field(
    "number",
    "target air",
    `target, target air, specified air, design air, air target, spec air, required air,
      specified air content`,
  ),
  tolerance: field(
    "tolerance",
    "tolerance",
    `tolerance, air tolerance, tolerance ±, tol, tol ±, plus minus, plus or minus, ±`,
  ),
} as const;
