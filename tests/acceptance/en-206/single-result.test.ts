import {
  en206QuantityNamed,
  singleResultLimits,
  type En206Quantity,
} from "../../../src/acceptance/en-206/single-result";
import { EN_206_SINGLE } from "../../check-values/decisions";

test.each(EN_206_SINGLE)("%s from %s to %s, German %s: %s to %s (%s)", (...row) => {
  const [named, low, high, german, least, most] = row;
  const quantity = en206QuantityNamed(named) as En206Quantity;
  expect(singleResultLimits(quantity, { low, high }, german)).toEqual({ low: least, high: most });
});

test("another quantity is said with those that are held", () => {
  expect(en206QuantityNamed("slump")).toMatchObject({ id: "en206-quantity-unknown" });
});
