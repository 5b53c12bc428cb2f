import type { Weight } from "../fieldsheet/finding";

/** How a weight looks, in the sheet and in the pane. Colour is never alone: word and shape go with it. */
export interface MarkStyle {
  readonly fill: string;
  readonly ink: string;
  readonly shape: string;
}

/** Our own palette. The fills differ in lightness, so that they differ for every kind of colour vision. */
export const MARK_STYLES: Readonly<Record<Weight, MarkStyle>> = {
  void: { fill: "#5b2a4e", ink: "#ffffff", shape: "■" },
  error: { fill: "#e59a78", ink: "#2b1208", shape: "▲" },
  doubt: { fill: "#f4dc8c", ink: "#2e2503", shape: "◆" },
  note: { fill: "#d9e8ee", ink: "#10242d", shape: "●" },
};
