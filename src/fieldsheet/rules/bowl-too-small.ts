import { phrase } from "../../messages/catalogue";
import type { Phrase } from "../../messages/sentence";
import { M3_PER_FT3 } from "../../measure/conversion";
import { litres, volumeUnitOf } from "../../measure/volume";
import { LEAST_BOWL } from "../../methods/apparatus/meter-tolerances";
import { firstOfEach } from "../first-of-each";
import type { JudgedTest } from "../judged-test";
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
    "The bowl of the volumetric meter holds at least 0.075 ft³ (Louisiana DOTD TR 202, 2008), or 2.0 L where it is noted in metric units (Tex-414-A, 2004–2008); the two are a pair, no conversion.",
  look: ({ all: rows }) =>
    firstOfEach(rows, smallBowl).map(({ record, found }) => ({
      record,
      field: "bowlVolume",
      values: {
        bowl: inUnit(Number.parseFloat(found), unitOf(found)),
        least: inUnit(LEAST_BOWL[found.endsWith("L") ? "L" : "ft3"], unitOf(found)),
      },
    })),
});

/** A bowl under the least size of the units that it is noted in, written with its unit. */
function smallBowl({ values: { bowlVolume } }: JudgedTest): string | undefined {
  const volume = bowlVolume && litres(bowlVolume, USUAL_BOWLS);
  if (!volume) return undefined;
  const unit = volumeUnitOf(bowlVolume, USUAL_BOWLS);
  if (unit !== "ft3" && unit !== "in3") {
    return volume < LEAST_BOWL.L ? `${Number(volume.toPrecision(4))} L` : undefined;
  }
  // Compared to the place of the least size: 129.6 in³ are 0.075 ft³.
  const ft3 = Number((volume / LITRES_PER_FT3).toFixed(4));
  return ft3 < LEAST_BOWL.ft3 ? `${ft3} ft³` : undefined;
}

function inUnit(amount: number, unit: string): Phrase {
  return phrase("amount-in-unit", { amount, unit });
}

function unitOf(volume: string): string {
  return volume.slice(volume.indexOf(" ") + 1);
}
