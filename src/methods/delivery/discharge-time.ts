/** Discharge is complete this many minutes after batching, unless specified otherwise (from memory, ASTM C94). */
export const DISCHARGE_WITHIN = 90;
