import { field } from "./field";

/** Slump and temperature of the same sample, and the weather. */
export const SLUMP_AND_WEATHER_FIELDS = {
  slump: field("measured", "slump", `slump, slump measured, measured slump, slump test`),
  nominalSlump: field(
    "measured",
    "specified slump",
    `specified slump, nominal slump, target slump, design slump, ordered slump, slump specified,
      slump target, slump ordered`,
  ),
  concreteTemperature: field(
    "measured",
    "concrete temperature",
    `concrete temperature, concrete temp, temperature of concrete, mix temperature, mix temp,
      fresh concrete temperature`,
  ),
  temperatureLow: field(
    "measured",
    "lowest concrete temperature",
    `lowest concrete temperature, minimum concrete temperature, min concrete temperature,
      min concrete temp, concrete temperature low`,
  ),
  temperatureHigh: field(
    "measured",
    "highest concrete temperature",
    `highest concrete temperature, maximum concrete temperature, max concrete temperature,
      max concrete temp, concrete temperature high`,
  ),
  airTemperature: field(
    "measured",
    "air temperature",
    `air temperature, air temp, ambient temperature, ambient temp, ambient air temperature,
      ambient, outside temperature`,
  ),
  humidity: field("number", "relative humidity", `relative humidity, humidity, rh, air humidity`),
  wind: field("measured", "wind speed", `wind speed, wind, wind velocity, speed of wind`),
} as const;
