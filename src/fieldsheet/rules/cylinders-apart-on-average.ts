import { QUANTITIES } from "../../measure/plausible";
import { exact } from "../../measure/rounding";
import { ACCEPTABLE_MEAN_DIFFERENCE } from "../../methods/specimens/cylinders";
import { sheetRule } from "../rule";
import { strengthsOfCylinders } from "../strengths-of-cylinders";

/** So many pairs give a mean that tells something (our own choice, ACI 214R speaks of ten). */
const LEAST_PAIRS = 10;

/** Pairs of cylinders that differ by too much on the whole, whatever each single pair does. */
export const cylindersApartOnAverage = sheetRule({
  id: "cylinders-apart-on-average",
  weight: "note",
  needs: ["firstCylinder", "secondCylinder"],
  says: ["cylinders-apart-on-average"],
  basis:
    "The strengths of pairs of cylinders differ on average by up to 145 psi (1 MPa) where the testing is good and by up to 290 psi (2 MPa) where it is acceptable (ACI 214R-11, as an article on it tells). It is looked at from ten pairs on (our own choice).",
  look({ all }) {
    const pairs = all.flatMap(({ values }) => {
      const found = strengthsOfCylinders(values);
      return found?.strengths.length === 2 ? [found] : [];
    });
    const systems = new Set(pairs.map(({ system }) => system));
    const [system] = systems;
    // A sheet that mixes the systems is no sheet to take a mean of.
    if (!system || systems.size > 1 || pairs.length < LEAST_PAIRS) return [];
    const differences = pairs.map(({ strengths: [a, b] }) => Math.abs(a! - b!));
    const mean = exact(differences.reduce((sum, one) => sum + one, 0) / pairs.length);
    const most = ACCEPTABLE_MEAN_DIFFERENCE[system];
    if (mean <= most) return [];
    const unit = QUANTITIES.strength.units[system];
    const shown = system === "us" ? Math.round(mean) : Number(mean.toFixed(2));
    const values = { pairs: pairs.length, mean: shown, most, unit };
    return [{ record: null, field: "firstCylinder", values }];
  },
});
