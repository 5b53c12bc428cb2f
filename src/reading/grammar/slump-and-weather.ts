import { field, measuredAgain } from "../sense";

const LIMIT = "specified limit allowed";

/** Slump and temperature of the same sample, and the weather. */
export const SLUMP_AND_WEATHER_GRAMMAR = {
  slump: measuredAgain(
    "slump, slump result|measured|reported",
    "result reported number amount",
    "length",
  ),
  nominalSlump: field("slump specified", "limit nominal", "length"),
  // A largest slump in a sheet may be the limit, the same for every test, or the largest that was measured.
  slumpLow: field("slump low specified|limit|allowed, ?slump low", LIMIT, "length"),
  slumpHigh: field("slump high specified|limit|allowed, ?slump high", LIMIT, "length"),
  concreteTemperature: measuredAgain(
    "temperature concrete, temperature mix, temperature fresh, temperature^, temperature result|measured^",
    "result mix time amount",
    "temperature",
  ),
  temperatureLow: field("temperature low", "specified limit", "temperature"),
  temperatureHigh: field("temperature high", "specified limit", "temperature"),
  dimension: field("dimension low", "size", "length"),
  airTemperature: field(
    "temperature air, temperature ambient",
    "air ambient time place",
    "temperature",
  ),
  humidity: field("humidity", "relative air ambient", "percent"),
  wind: field("wind, wind speed", "speed result", "speed"),
} as const;
