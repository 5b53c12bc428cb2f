import { countFromCell, CUPS } from "../../measure/counted";
import type { Argument } from "./argument";

/** Calibrated cups, read as the check of a sheet reads them. */
export const cups: Argument<number> = {
  name: "cups",
  optional: false,
  setting: false,
  read: (cell) => countFromCell(cell, CUPS),
};
