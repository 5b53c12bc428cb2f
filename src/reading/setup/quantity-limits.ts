import type { CellValue } from "../../measure/cell-value";
import { isIssue, issue, issuePhrase, type Issue } from "../../measure/issue";
import type { DecimalMark } from "../../measure/number-from-cell";
import {
  specificationFromCell,
  toleranceFromCell,
  type Specification,
  type Tolerance,
} from "../../measure/specification";
import { airSpecificationFromCell, airToleranceFromCell } from "../air-in-percent";
import { limitsIn } from "../limits-in";
import type { Dimension } from "../unit-spellings";
import { readHeader } from "../units-in-header";
import type { Line } from "./line";
import {
  MEASURED_IN,
  ROLES,
  type LimitRole,
  type MixHeading,
  type SpecifiedQuantity,
} from "./mix-headings";

/** Between which limits a quantity has to lie. */
export interface QuantityLimits {
  readonly low?: number;
  readonly high?: number;
  /** What is aimed at, where nothing says how far from it; the trade has a usual tolerance. */
  readonly target?: number;
  /** As written with one of them. */
  readonly unit?: string;
}

/** Quantities for which the trade has a usual tolerance. */
const HAS_USUAL_TOLERANCE: ReadonlySet<SpecifiedQuantity> = new Set(["density", "slump"]);

const UNIT_BEHIND = /^(.*[\d¼½¾.])\s*([a-zA-Z°"″][\w°"″/³^. ]*)$/;

/**
 * The limits of a quantity in a line of specifications: its low and high, its target with its tolerance,
 * or all of it in one cell, as "115 ± 3 lb/ft³".
 */
export function quantityLimits(
  quantity: SpecifiedQuantity,
  { cells, units, heading: written }: Line<MixHeading>,
  line: number,
  decimal: DecimalMark,
): QuantityLimits | Issue {
  const read: Partial<Record<LimitRole, Specification | Tolerance>> = {};
  const heading = (role: LimitRole) => `${quantity} ${role}` as const;
  let unit: string | undefined;
  for (const role of ROLES) {
    const cell = cells[heading(role)];
    if (cell === undefined) continue;
    const split = withoutUnit(cell, MEASURED_IN[quantity]);
    const value = readAs(quantity, role)(split.cell, decimal);
    if (isIssue(value)) {
      const why = issuePhrase(value);
      return issue("setup-value-unreadable", { line, heading: written(heading(role)), why });
    }
    const own = split.unit ?? units[heading(role)];
    if (unit !== undefined && own !== undefined && unit !== own) {
      return issue("setup-units-differ", {
        line,
        heading: written(heading(role)),
        one: unit,
        other: own,
      });
    }
    unit ??= own;
    if (value !== undefined) read[role] = value;
  }
  const { low, high } = limitsIn(read as Parameters<typeof limitsIn>[0]);
  if (low !== undefined && high !== undefined && low > high) {
    return issue("setup-limits-crossed", { line, heading: written(heading("low")), low, high });
  }
  const limited = low !== undefined || high !== undefined;
  const target = limited ? undefined : (read.target as Specification | undefined)?.aim;
  if (target !== undefined && !HAS_USUAL_TOLERANCE.has(quantity)) {
    return issue("setup-target-alone", { line, heading: written(heading("target")), target });
  }
  if (read.tolerance && !read.target)
    return issue("setup-tolerance-alone", { line, heading: written(heading("tolerance")) });
  return {
    ...(low !== undefined && { low }),
    ...(high !== undefined && { high }),
    ...(target !== undefined && { target }),
    ...(unit !== undefined && { unit }),
  };
}

function readAs(quantity: SpecifiedQuantity, role: LimitRole) {
  if (role === "tolerance") return quantity === "air" ? airToleranceFromCell : toleranceFromCell;
  return quantity === "air" ? airSpecificationFromCell : specificationFromCell;
}

/** A cell without the unit behind its numbers. */
function withoutUnit(
  cell: CellValue,
  dimension: Dimension,
): { readonly cell: CellValue; readonly unit?: string } {
  const [, numbers, unit] = (typeof cell === "string" && UNIT_BEHIND.exec(cell.trim())) || [];
  if (unit === undefined || readHeader(unit).onlyUnit?.dimension !== dimension) return { cell };
  return { cell: numbers!, unit: unit.trim() };
}
