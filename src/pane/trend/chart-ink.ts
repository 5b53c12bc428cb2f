const COLOURS = ["line", "grid", "text", "band", "edge", "limit", "below", "above"] as const;

/** Colours of a chart. */
export type ChartInk = Readonly<Record<(typeof COLOURS)[number] | "ground", string>>;

/** The colours that an element's style sheet gives charts in it. */
export function inkOf(place: Element): ChartInk {
  const styles = getComputedStyle(place);
  const inks = COLOURS.map((name) => [name, styles.getPropertyValue(`--chart-${name}`).trim()]);
  return {
    ...(Object.fromEntries(inks) as Record<(typeof COLOURS)[number], string>),
    ground: styles.getPropertyValue("--ground").trim(),
  };
}

/** The colours for paper, whatever the screen has. */
export function paperInk(): ChartInk {
  const paper = document.createElement("div");
  paper.className = "fresh-paper";
  document.body.append(paper);
  const ink = inkOf(paper);
  paper.remove();
  return ink;
}
