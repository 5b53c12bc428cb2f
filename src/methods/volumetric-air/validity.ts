/**
 * Foam over this many full percent divisions of the neck makes the test void: it hides the level (meter
 * maker's manual, 2019, describing C173).
 */
export const FOAM_LIMIT = 2;
