import { field } from "./field";

/** Slump and temperature of the same sample, and the weather. */
export const SLUMP_AND_WEATHER_FIELDS = {
  slump: field("measured"),
  nominalSlump: field("measured"),
  slumpLow: field("measured"),
  slumpHigh: field("measured"),
  concreteTemperature: field("measured"),
  temperatureLow: field("measured"),
  temperatureHigh: field("measured"),
  dimension: field("measured"),
  airTemperature: field("measured"),
  humidity: field("number"),
  wind: field("measured"),
} as const;
