import { say } from "../../src/messages/pane-catalogue";
import type { SampleSheet } from "./sheet";

/** The last sheet of a sample: what it is, line by line, and the cautions below. */
export function readMeSheet(about: readonly string[]): SampleSheet {
  const lines = [
    ...about,
    "",
    "Cautions",
    say("caution-caustic"),
    say("caution-flammable"),
    say("caution-lifting"),
    say("caution-deferral"),
  ];
  return {
    name: "Read me",
    columns: [{ width: 110 }],
    headerRows: 1,
    wrapped: [0],
    rows: lines.map((line) => (line === "" ? [] : [{ v: line }])),
  };
}
