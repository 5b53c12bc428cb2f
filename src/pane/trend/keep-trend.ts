import type { Trend } from "../../acceptance/trend";
import type { DecimalMark } from "../../measure/number-from-cell";
import { say } from "../../messages/pane-catalogue";
import { button, element } from "../kit/element";
import { saveFile } from "../kit/save-file";
import type { PaneCommands } from "../state/commands";
import { chartOrder } from "./chart-order";
import { chartDrawing, pngFile, svgFile } from "./chart-picture";

/** A trend that is drawn. */
interface DrawnTrend {
  readonly trend: Trend;
  readonly title: string;
  readonly decimal: DecimalMark;
}

/**
 * The buttons that keep the trend: as a chart in the workbook where the spreadsheet draws charts, else
 * as a picture or a drawing.
 *
 * @param drawn What is drawn now, if anything is.
 */
export function keepTrendButtons(
  { addChart }: PaneCommands,
  drawn: () => DrawnTrend | undefined,
): HTMLElement {
  const keep = (act: (now: DrawnTrend) => unknown) => () => {
    const now = drawn();
    if (now) void act(now);
  };
  const drawing = ({ trend, title, decimal }: DrawnTrend) => chartDrawing(trend, title, decimal);
  const buttons = addChart
    ? [
        button(
          say("trend-add-chart"),
          keep(({ trend, title }) => addChart(chartOrder(trend, title))),
        ),
      ]
    : [
        button(
          say("trend-save-png"),
          keep(async (now) => saveFile(`${now.title}.png`, await pngFile(drawing(now)))),
        ),
        button(
          say("trend-save-svg"),
          keep((now) => saveFile(`${now.title}.svg`, svgFile(drawing(now)))),
        ),
      ];
  return element("div", { class: "actions" }, ...buttons);
}
