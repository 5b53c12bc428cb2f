import { unitSystemFromCell, USUAL_SYSTEM, type UnitSystem } from "../../measure/unit-system";
import type { Argument } from "./argument";

/** The system of units, last argument of a function that knows two: "us" unless given. */
export const units: Argument<UnitSystem> = {
  name: "units",
  optional: true,
  setting: true,
  otherwise: USUAL_SYSTEM,
  read: unitSystemFromCell,
};
