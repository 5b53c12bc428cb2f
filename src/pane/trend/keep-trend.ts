import type { Trend } from "../../acceptance/trend";
import { say } from "../../messages/pane-catalogue";
import { chartOrder } from "./chart-order";
import { chartPicture, saveFile } from "./chart-picture";
import type { PaneCommands } from "../state/commands";
import { button } from "../kit/element";

/** A trend that is drawn. */
interface DrawnTrend {
  readonly trend: Trend;
  readonly title: string;
  readonly canvas: HTMLCanvasElement;
}

/**
 * The button that keeps the trend: as a chart in the workbook where the spreadsheet draws charts, else
 * as a picture.
 *
 * @param chart Element whose colours the picture takes.
 * @param drawn What is drawn now, if anything is.
 */
export function keepTrendButton(
  commands: PaneCommands,
  chart: HTMLElement,
  drawn: () => DrawnTrend | undefined,
): HTMLElement {
  const { addChart } = commands;
  if (!addChart) return button(say("trend-save-picture"), () => void savePicture(chart, drawn()));
  return button(say("trend-add-chart"), () => {
    const now = drawn();
    if (now) void addChart(chartOrder(now.trend, now.title));
  });
}

async function savePicture(chart: HTMLElement, drawn: DrawnTrend | undefined): Promise<void> {
  if (!drawn) return;
  const styles = getComputedStyle(chart);
  const colours = {
    ground: styles.getPropertyValue("--ground").trim(),
    text: styles.getPropertyValue("--chart-text").trim(),
  };
  saveFile(`${drawn.title}.png`, await chartPicture(drawn.canvas, drawn.title, colours));
}
