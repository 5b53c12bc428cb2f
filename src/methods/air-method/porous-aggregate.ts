const POROUS = /light[\s-]*weight|\blwa\b|\blw\b|slag|expanded|pumice|scoria|cinder|porous/i;
const SAID_NOT_TO_BE = /\b(?:no|non|not|without)\b/i;

/**
 * Whether a text names lightweight, slag or other very porous aggregate, whose own pores hold air
 * that a pressure meter counts in.
 *
 * @see ASTM C231-03, scope; Kansas DOT KT-18 and KT-20; Montana DOT MT 102.
 */
export function isPorousAggregate(text: string): boolean {
  return POROUS.test(text) && !SAID_NOT_TO_BE.test(text);
}
