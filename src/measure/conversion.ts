/** One pound in kilograms, exact by definition. */
export const KG_PER_LB = 0.45359237;

/** One cubic foot in cubic metres, exact by definition. */
export const M3_PER_FT3 = 0.028316846592;

/** 1 kg/m³ in lb/ft³: 0.0624279606. */
export const LB_FT3_PER_KG_M3 = M3_PER_FT3 / KG_PER_LB;

/** Cubic feet in a cubic yard. */
export const FT3_PER_YD3 = 27;
