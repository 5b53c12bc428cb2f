/** A calibrated cup of the volumetric meter, % of the bowl (from memory, ASTM C173 apparatus). */
export const CUP_SHARE = { low: 0.96, high: 1.04 } as const;

/**
 * Least capacity of the bowl: ft³ (Louisiana DOTD TR 202, 2008) and L (Tex-414-A, 2004–2008; 0.002 m³
 * in TR 202). A pair, no conversion: 0.075 ft³ are 2.12 L.
 */
export const LEAST_BOWL = { ft3: 0.075, L: 2 } as const;
