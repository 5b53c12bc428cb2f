import { say } from "../../messages/pane-catalogue";
import { totalOf } from "../mark-report";
import type { MarkReport } from "../sheet-host";
import { excelCan } from "./abilities";
import { asOneStep } from "./in-excel";
import { leftBehind } from "./left-behind";
import { findOurMarks, takeOff } from "./our-marks";
import { stateOfSheets } from "./sheet-state";

/** Takes every mark of ours off the whole workbook. */
export async function removeMarks(): Promise<MarkReport> {
  return asOneStep(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id");
    await context.sync();
    const states = await stateOfSheets(
      context,
      worksheets.items.map((sheet) => ({ sheet })),
    );
    const ours = await findOurMarks(context, states);
    await takeOff(states, ours).sync(context);
    const report = totalOf(
      states.flatMap((state, i) => {
        const { areas, places } = ours[i]!;
        const cells = areas.reduce((sum, { cellCount }) => sum + cellCount, 0);
        return [
          { cells: state.takesFormats ? cells : 0 },
          { notes: state.takesNotes ? places.ours.length : 0 },
          leftBehind(state, ours[i]!),
        ];
      }),
    );
    if (report.cells === 0 || excelCan("notes")) return report;
    return { ...report, remarks: [...report.remarks, say("notes-not-seen-here")] };
  });
}
