import { testRule } from "../rule";
import { unreadableAs } from "../unreadable-as";

/** The correction takes away more than was read. */
export const airBelowZero = testRule({
  id: "air-below-zero",
  weight: "error",
  needs: ["alcohol"],
  says: ["air-below-zero"],
  basis: "Concrete cannot hold less than no air (from the definition of the method).",
  look: ({ refused }) => unreadableAs(refused, ["air-below-zero"]),
});
