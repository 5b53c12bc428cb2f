/** A calibrated cup of the volumetric meter, % of the bowl (from memory, ASTM C173 apparatus). */
export const CUP_SHARE = { low: 0.96, high: 1.04 } as const;

/** Least capacity of the bowl, ft³ (Louisiana DOTD TR 202, 2008). */
export const LEAST_BOWL_FT3 = 0.075;
