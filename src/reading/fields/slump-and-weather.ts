import { field } from "./field";

/** Slump and temperature of the same sample, and the weather. */
export const SLUMP_AND_WEATHER_FIELDS = {
  slump: field("measured", "slump"),
  nominalSlump: field("measured", "specified slump"),
  slumpLow: field("measured", "lowest slump"),
  slumpHigh: field("measured", "highest slump"),
  concreteTemperature: field("measured", "concrete temperature"),
  temperatureLow: field("measured", "lowest concrete temperature"),
  temperatureHigh: field("measured", "highest concrete temperature"),
  dimension: field("measured", "least dimension"),
  airTemperature: field("measured", "air temperature"),
  humidity: field("number", "relative humidity"),
  wind: field("measured", "wind speed"),
} as const;
