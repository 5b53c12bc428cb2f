import { M3_PER_FT3 } from "../../measure/conversion";
import { litres } from "../../measure/volume";
import { LEAST_BOWL_FT3 } from "../../methods/apparatus/meter-tolerances";
import { firstOfEach } from "../first-of-each";
import { sheetRule } from "../rule";

/** What bowls of a volumetric meter hold. */
export const USUAL_BOWLS = { ft3: [0.02, 0.5], L: [0.6, 15], mL: [600, 15_000] } as const;

const LITRES_PER_FT3 = M3_PER_FT3 * 1000;

/** A bowl of the volumetric meter under the least size. */
export const bowlTooSmall = sheetRule({
  id: "bowl-too-small",
  weight: "doubt",
  needs: ["bowlVolume"],
  says: ["bowl-too-small"],
  basis:
    "The bowl of the volumetric meter holds at least 0.075 ft³, 2.12 L (Louisiana DOTD TR 202, 2008).",
  look: ({ all: rows }) =>
    firstOfEach(rows, ({ values: { bowlVolume } }) => {
      const volume = bowlVolume && litres(bowlVolume, USUAL_BOWLS);
      // Compared as it is written, to the place of the least size: 2.12 L is 0.075 ft³.
      const ft3 = volume && Number((volume / LITRES_PER_FT3).toFixed(4));
      return ft3 && ft3 < LEAST_BOWL_FT3 ? ft3 : undefined;
    }).map(({ row, found }) => ({
      row,
      field: "bowlVolume",
      values: { ft3: found, least: LEAST_BOWL_FT3 },
    })),
});
