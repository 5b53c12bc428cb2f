import { QUANTITIES, type Quantity } from "../../measure/plausible";

/**
 * What a limit of the slump is, to tell inches from millimetres: no limit but 0 is less than the least
 * nominal slump.
 */
export function slumpLimit(limit: number): Quantity {
  return limit === 0 ? QUANTITIES.slump : QUANTITIES.nominalSlump;
}
