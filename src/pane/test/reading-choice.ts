import type { JudgedTest } from "../../fieldsheet/judged-test";
import type { DecimalMark } from "../../measure/number-from-cell";
import { readingsAgree } from "../../methods/volumetric-air/meter-reading";
import { say } from "../../messages/pane-catalogue";
import { shownPercent } from "../kit/shown-number";

/** How the final reading was chosen from those that were taken, in sentences. */
export function readingChoice({ values, readings }: JudgedTest, decimal: DecimalMark): string[] {
  if (values.first === undefined || !readings) return [];
  const [first, second, third] = [values.first, values.second, values.third].map((reading) =>
    reading === undefined ? "" : shownPercent(reading, decimal),
  ) as [string, string, string];
  if (values.second === undefined) return [say("reading-second-missing", { first })];
  if (readingsAgree(values.first, values.second))
    return [
      say("reading-second-agrees", { first, second }),
      ...(third ? [say("reading-third-unneeded", { third })] : []),
    ];
  const differs = say("reading-second-differs", { first, second });
  if (values.third === undefined) return [differs, say("reading-third-missing")];
  const agrees = readings.next === "final";
  return [
    differs,
    say(agrees ? "reading-third-agrees" : "reading-third-differs", { second, third }),
  ];
}
