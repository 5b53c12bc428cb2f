import { airMethodNamed } from "../../../src/methods/air-method/named-method";
import { isPorousAggregate } from "../../../src/methods/air-method/porous-aggregate";

// The numbers are those of ASTM C173, C231, C138 and AASHTO T 196, T 152, T 121; the words common practice.
test.each([
  ["Volumetric", "volumetric"],
  ["ROLLER METER", "volumetric"],
  ["C173", "volumetric"],
  ["ASTM C 173", "volumetric"],
  ["c--173", "volumetric"],
  ["AASHTO T196", "volumetric"],
  ["T-196", "volumetric"],
  ["T - 196M", "volumetric"],
  ["Pressure", "pressure"],
  ["Type B", "pressure"],
  ["typeA meter", "pressure"],
  ["C231", "pressure"],
  ["C - 231", "pressure"],
  ["T 152", "pressure"],
  ["T152", "pressure"],
  ["Gravimetric", "gravimetric"],
  ["C138", "gravimetric"],
  ["C-138", "gravimetric"],
  ["T121", "gravimetric"],
  ["T 121", "gravimetric"],
  ["C173 / C231", undefined],
  ["BC173", undefined],
  ["BT196", undefined],
  ["Type Bravo", undefined],
  ["", undefined],
  ["the usual", undefined],
])("“%s” names %s", (text, method) => {
  expect(airMethodNamed(text)).toBe(method);
});

// ASTM C231-03, scope: not for lightweight, slag and other aggregate of high porosity.
test.each([
  ["Lightweight", true],
  ["light weight shale", true],
  ["light-weight", true],
  ["LWA 1/2 in", true],
  ["LW", true],
  ["air-cooled slag", true],
  ["expanded clay", true],
  ["pumice", true],
  ["scoria", true],
  ["cinder", true],
  ["porous", true],
  ["normal weight", false],
  ["not lightweight", false],
  ["non-porous limestone", false],
  ["no slag", false],
  ["without LWA", false],
  ["lwap", false],
  ["knotty lightweight", true],
  ["", false],
])("aggregate “%s” is porous: %s", (text, porous) => {
  expect(isPorousAggregate(text)).toBe(porous);
});
