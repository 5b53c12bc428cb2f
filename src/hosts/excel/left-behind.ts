import { say } from "../../messages/pane-catalogue";
import { placeNames } from "../place-names";
import type { MarkReport } from "../sheet-host";
import type { OurMarks } from "./our-marks";
import { positionOf } from "./position";
import type { SheetState } from "./sheet-state";

/** Says what of ours stays on a sheet although it should go, and why. */
export function leftBehind(
  { name: sheet, takesFormats, takesNotes }: SheetState,
  { formats, places }: OurMarks,
): Partial<MarkReport> {
  const changed = placeNames(sheet, places.changed.map(positionOf));
  const kept =
    formats.length > 0 && !takesFormats
      ? [say("marks-left-on-protected-sheet", { sheet })]
      : places.ours.length > 0 && !takesNotes
        ? [say("notes-left-on-protected-sheet", { sheet })]
        : [];
  const remarks = [
    ...kept,
    ...(changed === "" ? [] : [say("notes-changed-left", { places: changed })]),
  ];
  return { remarks };
}
